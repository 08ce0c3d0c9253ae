#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// A file handle, closed at the end.
class Descriptor {
 public:
  explicit Descriptor(int number = -1) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept : number_(other.release()) {}
  Descriptor& operator=(Descriptor&& other) noexcept;
  ~Descriptor();
  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  int release();

 private:
  int number_;
};

/// A set of changes to the files of one folder, carried out together or not at all.
/// What is not committed is undone when the object goes.
class FolderChange {
 public:
  /// Opens the folder, making it if it is missing, and keeps other runs out.
  static Result<FolderChange> begin(const std::filesystem::path& folder);
  FolderChange(FolderChange&&) = default;
  ~FolderChange();

  /// Writes the new content of a file under a temporary name.
  Result<void> add(const std::string& name, const std::string& text);
  /// Takes away what a run that was killed has left of a file under temporary names.
  void discard_leftovers(const std::string& name);
  /// Has a file removed, if it is there.
  void remove(const std::string& name);
  /// Whether a file of that name begins with a text.
  bool begins_with(const std::string& name, const std::string& text) const;
  /// Puts all changes in place.
  Result<void> commit();

 private:
  FolderChange() = default;
  Result<void> replace(const std::string& name, bool by_new);
  enum class Target { Absent, File, Other };
  Target target(const std::string& name) const;
  void roll_back();
  void clean_up();
  tl::unexpected<Errors> failure(const std::string& name, const char* what) const;

  std::filesystem::path folder_;
  std::vector<std::filesystem::path> made_;  ///< folders, the deepest last
  Descriptor handle_;
  std::vector<std::string> added_, removed_;
  std::vector<std::string> replaced_;  ///< in place already
  std::set<std::string> kept_;         ///< of these the old file is kept until the end
};

}  // namespace sheerlap

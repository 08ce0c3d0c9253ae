#pragma once

#include <filesystem>
#include <string>

#include "geometry/result.h"

namespace sheerlap {

/// A file of our own for a library that writes nowhere else; it goes with its object.
class TemporaryFile {
 public:
  /// @errors  Unreadable: the system's folder for temporary files takes no file
  static Result<TemporaryFile> make();

  TemporaryFile(TemporaryFile&& other) noexcept;
  TemporaryFile& operator=(TemporaryFile&&) = delete;
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile();

  const std::filesystem::path& path() const { return path_; }
  /// @errors  Unreadable: the file cannot be read
  Result<std::string> bytes() const;

 private:
  explicit TemporaryFile(std::filesystem::path path) : path_(std::move(path)) {}

  std::filesystem::path path_;
};

}  // namespace sheerlap

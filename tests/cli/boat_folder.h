#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "cli/joint_file.h"

namespace sheerlap {

/// A joint file with every table that there is, and every key but those that only the
/// strength needs.
extern const std::string full_joint_text;

/// The same with those too.
extern const std::string strength_joint_text;

/// A joint file with the needed keys only.
extern const std::string short_joint_text;

/// Four rows of a half boat, without offsets.
extern const std::string sheer_text;

/// The text with its first `from` replaced; stops the test if there is none.
std::string replaced(std::string text, std::string_view from, std::string_view to);

/// A folder of its own, removed at the end.
class BoatFolder {
 public:
  BoatFolder();
  ~BoatFolder();
  BoatFolder(const BoatFolder&) = delete;
  BoatFolder& operator=(const BoatFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }
  void write(const std::string& name, const std::string& text) const;
  std::string text(const std::string& name) const;

  /// Reads "joint.toml".
  Result<JointFile> read() const;

  /// The messages of a refusal, the folder's own path left out of them; none if the
  /// joint file reads.
  std::vector<std::string> refusal() const;

 private:
  std::filesystem::path path_;
};

/// The messages with which a joint file, or its sheer table, is refused.
std::vector<std::string> refusal_of(const std::string& joint,
                                    const std::string& sheer = sheer_text);

/// Fails the test unless the two are alike.
void check_messages(const std::vector<std::string>& found,
                    const std::vector<std::string>& expected);

}  // namespace sheerlap

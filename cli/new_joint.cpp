#include "cli/new_joint.h"

#include <fmt/format.h>

#include <cerrno>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>

#include "cli/starter_files.h"

namespace sheerlap {
namespace {

namespace fs = std::filesystem;

struct NewFile {
  fs::path path;
  fs::path temporary;
  std::string_view text;
};

std::vector<NewFile> new_files(const fs::path& folder) {
  const auto file = [&](const std::string& name, std::string_view text) {
    return NewFile{folder / name, folder / (".sheerlap-new-" + name), text};
  };
  return {file("joint.toml", starter_joint_text()),
          file("sheer.csv", starter_sheer_text())};
}

Errors already_there(const std::vector<NewFile>& files) {
  Errors errors;
  std::error_code ignored;
  for (const NewFile& file : files)
    if (fs::exists(fs::symlink_status(file.path, ignored)))
      errors.push_back(
          {ErrorKind::Unreadable, "",
           fmt::format("{} is there already: give another folder, or move it away",
                       file.path.string())});
  return errors;
}

tl::unexpected<Errors> not_written(const fs::path& path, const std::error_code& error) {
  return unreadable("", fmt::format("{} cannot be written ({}): give a folder that can "
                                    "be written in",
                                    path.string(), error.message()));
}

/// What is written is taken away again unless it is kept.
class Writing {
 public:
  ~Writing() {
    std::error_code ignored;
    for (const fs::path& path : written_) fs::remove(path, ignored);
  }
  bool write(const NewFile& file) {
    std::ofstream stream(file.temporary, std::ios::binary | std::ios::trunc);
    if (!stream.is_open()) return false;
    written_.push_back(file.temporary);
    stream << file.text;
    stream.close();
    return !stream.fail();
  }
  std::error_code put_in_place(const NewFile& file) {
    std::error_code error;
    fs::rename(file.temporary, file.path, error);
    if (!error) written_.push_back(file.path);
    return error;
  }
  void keep() { written_.clear(); }

 private:
  std::vector<fs::path> written_;
};

}  // namespace

Result<std::vector<fs::path>> write_new_joint(const fs::path& folder) {
  std::error_code error;
  fs::create_directories(folder, error);
  if (error) return not_written(folder, error);
  const auto files = new_files(folder);
  Errors in_the_way = already_there(files);
  if (!in_the_way.empty()) return tl::unexpected(std::move(in_the_way));

  Writing writing;
  for (const NewFile& file : files) {
    errno = 0;
    if (!writing.write(file))
      return not_written(file.path, std::error_code(errno, std::generic_category()));
  }
  std::vector<fs::path> paths;
  for (const NewFile& file : files) {
    error = writing.put_in_place(file);
    if (error) return not_written(file.path, error);
    paths.push_back(file.path);
  }
  writing.keep();
  return paths;
}

}  // namespace sheerlap

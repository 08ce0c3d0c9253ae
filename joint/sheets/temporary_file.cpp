#include "joint/sheets/temporary_file.h"

#include <stdlib.h>
#include <unistd.h>

#include <fstream>
#include <iterator>
#include <system_error>
#include <utility>

namespace sheerlap {

Result<TemporaryFile> TemporaryFile::make() {
  std::error_code error;
  const auto folder = std::filesystem::temp_directory_path(error);
  std::string name = (folder / ".sheerlap-XXXXXX").string();
  const int file = error ? -1 : mkstemp(name.data());
  if (file < 0)
    return unreadable(folder.string(),
                      "no temporary file can be written: name a folder that can, as "
                      "TMPDIR");
  close(file);
  return TemporaryFile(name);
}

TemporaryFile::TemporaryFile(TemporaryFile&& other) noexcept
    : path_(std::exchange(other.path_, {})) {}

TemporaryFile::~TemporaryFile() {
  std::error_code ignored;
  if (!path_.empty()) std::filesystem::remove(path_, ignored);
}

Result<std::string> TemporaryFile::bytes() const {
  std::ifstream file(path_, std::ios::binary);
  std::string bytes{std::istreambuf_iterator<char>(file), {}};
  if (!file.good() && !file.eof())
    return unreadable(path_.string(), "a temporary file cannot be read");
  return bytes;
}

}  // namespace sheerlap

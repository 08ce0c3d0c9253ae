#include "cli/folder_change.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <string_view>
#include <system_error>
#include <utility>

namespace sheerlap {
namespace {

std::string reason(int error) { return std::generic_category().message(error); }

std::string new_name(const std::string& name) { return ".sheerlap-new-" + name; }
std::string old_name(const std::string& name) { return ".sheerlap-old-" + name; }

/// The folders that have to be made for `folder` to exist, the deepest last.
std::vector<std::filesystem::path> missing_folders(
    const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> missing;
  std::error_code error;
  for (std::filesystem::path at = std::filesystem::absolute(folder, error);
       !at.empty() && !std::filesystem::exists(at, error) && at != at.parent_path();
       at = at.parent_path())
    if (at.has_filename()) missing.insert(missing.begin(), at);
  return missing;
}

bool write_all(int file, std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = ::write(file, text.data(), text.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return false;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

}  // namespace

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
  std::swap(number_, other.number_);
  return *this;
}

Descriptor::~Descriptor() {
  if (is_open()) ::close(number_);
}

int Descriptor::release() { return std::exchange(number_, -1); }

tl::unexpected<Errors> FolderChange::failure(const std::string& name,
                                             const char* what) const {
  const int error = errno;
  return unreadable("",
                    fmt::format("{}: {}: {}: give a folder that can be written with "
                                "--out",
                                (folder_ / name).string(), what, reason(error)));
}

Result<FolderChange> FolderChange::begin(const std::filesystem::path& folder) {
  FolderChange change;
  change.folder_ = folder;
  for (const auto& missing : missing_folders(folder)) {
    if (::mkdir(missing.c_str(), 0777) != 0 && errno != EEXIST)
      return change.failure("", "the folder cannot be made");
    change.made_.push_back(missing);
  }
  change.handle_ =
      Descriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!change.handle_.is_open())
    return change.failure("", "the folder cannot be opened");
  // a file system without locks is written to all the same
  if (::flock(change.handle_.number(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
    return change.failure("", "another run is writing here");
  return change;
}

FolderChange::~FolderChange() {
  if (handle_.is_open()) {
    roll_back();
    clean_up();
  }
  for (; !made_.empty(); made_.pop_back()) ::rmdir(made_.back().c_str());
}

FolderChange::Target FolderChange::target(const std::string& name) const {
  struct stat found {};
  if (::fstatat(handle_.number(), name.c_str(), &found, AT_SYMLINK_NOFOLLOW) != 0)
    return Target::Absent;
  const bool file = S_ISREG(found.st_mode) || S_ISLNK(found.st_mode);
  return file ? Target::File : Target::Other;
}

void FolderChange::discard_leftovers(const std::string& name) {
  ::unlinkat(handle_.number(), new_name(name).c_str(), 0);
  ::unlinkat(handle_.number(), old_name(name).c_str(), 0);
}

Result<void> FolderChange::add(const std::string& name, const std::string& text) {
  if (target(name) == Target::Other) {
    errno = EEXIST;
    return failure(name, "stands in the way and is no file");
  }
  Descriptor file(::openat(handle_.number(), new_name(name).c_str(),
                           O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666));
  if (!file.is_open()) return failure(name, "cannot be written");
  added_.push_back(name);
  if (!write_all(file.number(), text) || ::fsync(file.number()) != 0 ||
      ::close(file.release()) != 0)
    return failure(name, "cannot be written");
  return {};
}

void FolderChange::remove(const std::string& name) {
  if (target(name) == Target::File) removed_.push_back(name);
}

bool FolderChange::begins_with(const std::string& name, const std::string& text) const {
  const Descriptor file(
      ::openat(handle_.number(), name.c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC));
  if (!file.is_open()) return false;
  std::string start(text.size(), '\0');
  const ssize_t count = ::read(file.number(), start.data(), start.size());
  return count == static_cast<ssize_t>(text.size()) && start == text;
}

/// Puts the new file in place of the old one, or nothing; the old one is kept under
/// another name where the file system can.
Result<void> FolderChange::replace(const std::string& name, bool by_new) {
  const int folder = handle_.number();
  const bool kept =
      ::linkat(folder, name.c_str(), folder, old_name(name).c_str(), 0) == 0;
  const bool absent = !kept && errno == ENOENT;
  if (kept) kept_.insert(name);
  const int status =
      by_new ? ::renameat(folder, new_name(name).c_str(), folder, name.c_str())
             : (absent ? 0 : ::unlinkat(folder, name.c_str(), 0));
  if (status != 0) return failure(name, "cannot be put in place");
  if (kept || absent) replaced_.push_back(name);
  return {};
}

Result<void> FolderChange::commit() {
  for (const std::string& name : added_)
    if (auto done = replace(name, true); !done) return done;
  for (const std::string& name : removed_)
    if (auto done = replace(name, false); !done) return done;
  if (::fsync(handle_.number()) != 0 && errno != EINVAL)
    return failure("", "cannot be written");
  replaced_.clear();
  clean_up();
  made_.clear();
  handle_ = Descriptor();
  return {};
}

void FolderChange::roll_back() {
  const int folder = handle_.number();
  for (; !replaced_.empty(); replaced_.pop_back()) {
    const std::string& name = replaced_.back();
    if (kept_.contains(name))
      ::renameat(folder, old_name(name).c_str(), folder, name.c_str());
    else
      ::unlinkat(folder, name.c_str(), 0);
  }
}

void FolderChange::clean_up() {
  for (const std::string& name : added_)
    ::unlinkat(handle_.number(), new_name(name).c_str(), 0);
  for (const std::string& name : kept_)
    ::unlinkat(handle_.number(), old_name(name).c_str(), 0);
  added_.clear();
  kept_.clear();
}

}  // namespace sheerlap

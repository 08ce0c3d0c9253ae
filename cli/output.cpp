#include "cli/output.h"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "joint/documents/printable.h"

namespace sheerlap {

Result<void> write_out(std::FILE* stream, const std::string& text) {
  const bool whole = std::fwrite(text.data(), 1, text.size(), stream) == text.size();
  if (whole && std::fflush(stream) == 0) return {};
  return unreadable("", fmt::format("standard output cannot be written: {}: give it a "
                                    "file or a program that takes it all",
                                    std::generic_category().message(errno)));
}

int report_errors(const Errors& errors) {
  std::string text;
  for (const Error& error : errors) text += printable(error.message) + "\n";
  // nobody is left to tell if this fails; the exit status still says it
  std::fputs(text.c_str(), stderr);
  const bool files = std::any_of(errors.begin(), errors.end(), [](const Error& error) {
    return error.kind == ErrorKind::Unreadable;
  });
  return files ? 3 : 2;
}

}  // namespace sheerlap

#include "cli/progress_line.h"

#include <unistd.h>

#include <cstdio>

namespace sheerlap {
namespace {

/// Back to the line's start, and the rest of it cleared.
/// @source  ECMA-48, EL (erase in line)
const char* const clear_line = "\r\x1b[K";

}  // namespace

ProgressLine::ProgressLine(bool quiet) : silent_(quiet || isatty(STDERR_FILENO) == 0) {}

ProgressLine::~ProgressLine() {
  if (shown_) std::fputs(clear_line, stderr);
}

void ProgressLine::show(const std::string& text) {
  if (silent_) return;
  std::fputs((clear_line + text).c_str(), stderr);
  shown_ = true;
}

}  // namespace sheerlap

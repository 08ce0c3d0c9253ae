#pragma once

#include <string>

namespace sheerlap {

/// User's text made safe to print on one line: each control character becomes a blank,
/// each byte that is not UTF-8, and each character that Unicode sets aside as none, a
/// question mark.
std::string printable(const std::string& text);

}  // namespace sheerlap

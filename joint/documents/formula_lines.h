#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlap {

/// A formula broken into lines of at most `width` characters, before a sign or after a
/// comma: where it can, outside of brackets. What cannot be broken stays whole.
std::vector<std::string> formula_lines(const std::string& formula, std::size_t width);

}  // namespace sheerlap

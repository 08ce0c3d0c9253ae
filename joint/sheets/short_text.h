#pragma once

#include <cstddef>
#include <string>

namespace sheerlap {

/// User's text of at most `count` characters, what is left out shown by dots; made
/// printable.
/// @param count  >= 1
std::string short_text(const std::string& text, std::size_t count);

}  // namespace sheerlap

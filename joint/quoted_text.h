#pragma once

#include <string>
#include <string_view>

namespace sheerlap {

/// What a user wrote, in double quotes, fit to stand in a message: no longer than 40
/// characters, and control characters as \xNN.
std::string quoted_text(std::string_view text);

}  // namespace sheerlap

#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "geometry/result.h"

namespace sheerlap {

/// What a file holds, byte for byte.
///
/// @param largest_bytes  more than this is refused
/// @errors  Unreadable: no such file, a directory, no leave to read it;
///          InvalidInput: too large. `where` is empty, `message` starts with a verb.
Result<std::string> text_of_file(const std::filesystem::path& path,
                                 std::size_t largest_bytes);

/// What keeps bytes from being text.
struct TextFault {
  std::size_t line = 1;
  std::string message;  ///< starts with a verb
};

/// The first fault of a text: it is empty, has a zero byte, or is not UTF-8.
std::optional<TextFault> text_fault(std::string_view text);

/// A text without the byte order mark that some programs put first.
std::string_view without_byte_order_mark(std::string_view text);

/// Whether a text has characters that stand for no sign: a tab, a line's end.
bool has_control_character(std::string_view text);

}  // namespace sheerlap

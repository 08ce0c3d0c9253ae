#include "cli/text_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <locale>
#include <system_error>

namespace sheerlap {
namespace {

/// Where the first surrogate stands: no character of UTF-8, and the standard library
/// lets it pass.
std::size_t first_surrogate(std::string_view text) {
  std::size_t place = text.find('\xED');
  while (place != std::string_view::npos && place + 1 < text.size() &&
         static_cast<unsigned char>(text[place + 1]) < 0xA0)
    place = text.find('\xED', place + 1);
  return std::min(place, text.size());
}

/// How many bytes of the text are whole UTF-8 characters, from its start.
std::size_t valid_utf8_bytes(std::string_view text) {
  using Utf8 = std::codecvt<char32_t, char8_t, std::mbstate_t>;
  const auto& utf8 = std::use_facet<Utf8>(std::locale::classic());
  std::mbstate_t state{};
  const auto* bytes = reinterpret_cast<const char8_t*>(text.data());
  const int valid = utf8.length(state, bytes, bytes + text.size(), text.size());
  return std::min(static_cast<std::size_t>(valid), first_surrogate(text));
}

std::size_t line_at(std::string_view text, std::size_t place) {
  const auto before = text.substr(0, place);
  return 1 + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
}

}  // namespace

Result<std::string> text_of_file(const std::filesystem::path& path,
                                 std::size_t largest_bytes) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored))
    return unreadable("", "is a directory: give the path of a file");
  errno = 0;
  std::ifstream file(path, std::ios::binary);
  if (!file)
    return unreadable("", fmt::format("cannot be read ({}): give the path of a file",
                                      std::generic_category().message(errno)));
  std::string text;
  std::string block(1 << 16, '\0');
  while (file && text.size() <= largest_bytes) {
    file.read(block.data(), static_cast<std::streamsize>(block.size()));
    text.append(block, 0, static_cast<std::size_t>(file.gcount()));
  }
  if (file.bad())
    return unreadable("", fmt::format("cannot be read to its end ({})",
                                      std::generic_category().message(errno)));
  if (text.size() > largest_bytes)
    return invalid_input(
        "", fmt::format("is too large: at most {} MB", largest_bytes / 1'000'000));
  return text;
}

std::optional<TextFault> text_fault(std::string_view text) {
  if (text.empty())
    return TextFault{1, "is empty: start from what the command new writes"};
  const std::size_t zero = text.find('\0');
  if (zero != std::string_view::npos)
    return TextFault{line_at(text, zero), "has a zero byte: save it as UTF-8 text"};
  const std::size_t valid = valid_utf8_bytes(text);
  if (valid < text.size())
    return TextFault{line_at(text, valid), "is not UTF-8: save it as UTF-8 text"};
  return std::nullopt;
}

std::string_view without_byte_order_mark(std::string_view text) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  if (text.starts_with(mark)) text.remove_prefix(mark.size());
  return text;
}

bool has_control_character(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
  });
}

}  // namespace sheerlap

#include "joint/length_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "joint/length_scanner.h"

namespace sheerlap {
namespace {

bool is_space(char c) { return c == ' ' || c == '\t'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

/// Typographic primes, quotes and minus signs as plain ones.
std::string plain_marks(std::string_view text) {
  struct Mark {
    std::string_view typed;
    char plain;
  };
  static constexpr std::array marks{Mark{"\u2032", '\''}, Mark{"\u2019", '\''},
                                    Mark{"\u2033", '"'},  Mark{"\u201D", '"'},
                                    Mark{"\u2212", '-'},  Mark{"\u00A0", ' '}};
  std::string plain;
  while (!text.empty()) {
    const auto mark = std::find_if(marks.begin(), marks.end(), [&](const Mark& m) {
      return text.starts_with(m.typed);
    });
    plain += mark == marks.end() ? text.front() : mark->plain;
    text.remove_prefix(mark == marks.end() ? 1 : mark->typed.size());
  }
  return plain;
}

}  // namespace

Result<Length> length_from_number(double number, LengthUnit unit) {
  if (!std::isfinite(number))
    return invalid_input("",
                         fmt::format("{} is not a length: a finite number", number));
  const Length length =
      unit == LengthUnit::Inches ? Length::inches(number) : Length::mm(number);
  if (length > longest_length || -length > longest_length)
    return invalid_input(
        "", fmt::format("{} is out of range: at most 1 km either way", number));
  return length;
}

Result<Length> length_from_text(std::string_view text, LengthUnit unit) {
  const std::string_view bare = trimmed(text);
  double number = 0;
  const char* end = bare.data() + bare.size();
  const auto read = std::from_chars(bare.data(), end, number);
  if (read.ec == std::errc() && read.ptr == end)
    return length_from_number(number, unit);
  const std::string plain = plain_marks(bare);
  const std::string_view marks = trimmed(plain);
  if (marks.empty())
    return invalid_input("",
                         "\"\" is empty: write a number, or text such as \"12 mm\"");
  return scanned_length(marks, unit);
}

std::string length_words(Length length, LengthUnit unit) {
  return unit == LengthUnit::Inches ? fmt::format("{:.6g} in", length.in_inches())
                                    : fmt::format("{:.6g} mm", length.in_mm());
}

}  // namespace sheerlap

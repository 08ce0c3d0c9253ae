#include "joint/documents/number_style.h"

#include <fmt/format.h>

#include <cassert>
#include <charconv>
#include <cmath>
#include <numeric>
#include <optional>
#include <string_view>
#include <vector>

namespace sheerlap {
namespace {

/// Steps are given by people: what is this close to a multiple is one.
constexpr double same_step = 1e-9;

bool is_whole(double value) { return std::abs(value - std::round(value)) < same_step; }

double mm_step(double round_to_mm) {
  const bool on_a_tape = is_whole(10 * round_to_mm) && std::round(10 * round_to_mm) > 0;
  return on_a_tape ? std::round(10 * round_to_mm) / 10 : 1;
}

double inch_step(double round_to_inches) {
  for (int parts = 1; parts <= 64; parts *= 2)
    if (std::abs(round_to_inches * parts - 1) < same_step) return 1.0 / parts;
  return 1.0 / 16;
}

std::string inch_fraction(double value, double step) {
  const auto parts = static_cast<long long>(std::round(1 / step));
  const long long count = std::llround(value / step);
  const long long whole = std::abs(count) / parts;
  const long long rest = std::abs(count) % parts;
  const std::string sign = count < 0 ? "-" : "";
  if (rest == 0) return fmt::format("{}{}", sign, whole);
  const long long common = std::gcd(rest, parts);
  const std::string fraction = fmt::format("{}/{}", rest / common, parts / common);
  if (whole == 0) return sign + fraction;
  return fmt::format("{}{}-{}", sign, whole, fraction);
}

/// Below this a length in a sentence is a gap, a thickness or a bit.
constexpr Length least_span = Length::mm(10);

/// Whether a length, worded to 4 decimals of a millimetre, is a multiple of a step.
bool is_multiple(Length length, Length step) {
  constexpr double worded_within_mm = 0.00005001;
  const double rest = std::remainder(length.in_mm(), step.in_mm());
  return std::abs(rest) <= worded_within_mm;
}

bool is_digit(char letter) { return letter >= '0' && letter <= '9'; }

bool is_letter_or_digit(char letter) {
  return is_digit(letter) || (letter >= 'a' && letter <= 'z') ||
         (letter >= 'A' && letter <= 'Z');
}

/// The end of the plain number that starts at `at`; `at` itself if none does.
std::size_t number_end(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(text[end])) ++end;
  if (end == at || end + 1 >= text.size() || text[end] != '.' ||
      !is_digit(text[end + 1]))
    return end;
  ++end;
  while (end < text.size() && is_digit(text[end])) ++end;
  return end;
}

/// The lengths that start at `at`, one or "one to another", if "mm" follows them.
struct WordedLengths {
  std::vector<Length> lengths;
  std::size_t end = 0;  ///< behind "mm"
};

std::optional<WordedLengths> worded_lengths(std::string_view text, std::size_t at) {
  const std::string_view to = " to ";
  const std::string_view unit = " mm";
  WordedLengths found;
  while (found.lengths.size() < 2) {
    const std::size_t end = number_end(text, at);
    double value = 0;
    std::from_chars(text.data() + at, text.data() + end, value);
    if (end == at) return std::nullopt;
    found.lengths.push_back(Length::mm(value));
    found.end = end + unit.size();
    if (text.substr(end).starts_with(unit) &&
        (found.end == text.size() || !is_letter_or_digit(text[found.end])))
      return found;
    if (!text.substr(end).starts_with(to)) return std::nullopt;
    at = end + to.size();
  }
  return std::nullopt;
}

}  // namespace

std::string decimals(double value, int count) {
  assert(std::isfinite(value));
  const double scale = std::pow(10.0, count);
  // halves go away from zero, as people round them, and -0 becomes 0
  double rounded = std::round(value * scale) / scale;
  if (!std::isfinite(rounded)) rounded = value;
  if (rounded == 0) rounded = 0;
  return fmt::format("{:.{}f}", rounded, count);
}

std::string at_most_decimals(double value, int count) {
  std::string text = decimals(value, count);
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string price_text(double amount) {
  const std::string exact = at_most_decimals(amount, 6);
  const auto point = exact.find('.');
  const bool short_of_two = point == std::string::npos || exact.size() - point < 3;
  return short_of_two ? decimals(amount, 2) : exact;
}

NumberStyle::NumberStyle(LengthUnit unit, Length round_to)
    : unit_(unit),
      step_(unit == LengthUnit::Millimetres ? mm_step(round_to.in_mm())
                                            : inch_step(round_to.in_inches())) {}

double NumberStyle::in_unit(Length length) const {
  return unit_ == LengthUnit::Millimetres ? length.in_mm() : length.in_inches();
}

std::string NumberStyle::unit_name() const {
  return unit_ == LengthUnit::Millimetres ? "mm" : "in";
}

std::string NumberStyle::unit_words() const {
  return unit_ == LengthUnit::Millimetres ? "mm" : "inches";
}

std::string NumberStyle::step_name() const {
  if (unit_ == LengthUnit::Inches) return inch_fraction(step_, step_) + " in";
  return at_most_decimals(step_, 1) + " mm";
}

std::string NumberStyle::running(Length length) const {
  if (unit_ == LengthUnit::Inches) return inch_fraction(length.in_inches(), step_);
  return decimals(std::round(length.in_mm() / step_) * step_, is_whole(step_) ? 0 : 1);
}

std::string NumberStyle::span(Length length) const {
  return decimals(in_unit(length), unit_ == LengthUnit::Millimetres ? 1 : 2);
}

std::string NumberStyle::span_step() const {
  return unit_ == LengthUnit::Millimetres ? "0.1 mm" : "0.01 in";
}

std::string NumberStyle::gap(Length length) const {
  return decimals(in_unit(length), unit_ == LengthUnit::Millimetres ? 2 : 3);
}

std::string NumberStyle::gap_step() const {
  return unit_ == LengthUnit::Millimetres ? "0.01 mm" : "0.001 in";
}

std::string NumberStyle::size(Length length) const {
  return at_most_decimals(in_unit(length), unit_ == LengthUnit::Millimetres ? 2 : 3);
}

std::string NumberStyle::size_with_unit(Length length) const {
  return size(length) + " " + unit_name();
}

std::string NumberStyle::in_sentence(Length length) const {
  const double value = in_unit(length);
  if (unit_ == LengthUnit::Millimetres) {
    const bool given = is_multiple(length, Length::mm(0.01));
    return at_most_decimals(value, given || length < least_span ? 2 : 1);
  }
  if (is_multiple(length, Length::mm(0.1))) return size(length);
  if (is_multiple(length, Length::inches(0.001))) return at_most_decimals(value, 3);
  if (is_multiple(length, Length::inches(0.0625))) return at_most_decimals(value, 4);
  return at_most_decimals(value, length < least_span ? 3 : 2);
}

std::string NumberStyle::sentence(const std::string& text) const {
  std::string result;
  std::size_t at = 0;
  while (at < text.size()) {
    const bool inside_word = at > 0 && (is_digit(text[at - 1]) || text[at - 1] == '.');
    const auto found = inside_word ? std::nullopt : worded_lengths(text, at);
    if (!found) {
      result += text[at++];
      continue;
    }
    const bool is_running = result.ends_with("girth ");
    for (const Length& length : found->lengths)
      result += (&length == &found->lengths.front() ? "" : " to ") +
                (is_running ? running(length) : in_sentence(length));
    result += " " + unit_name();
    at = found->end;
  }
  return result;
}

std::string NumberStyle::full(Length length) const {
  return decimals(in_unit(length), unit_ == LengthUnit::Millimetres ? 3 : 4);
}

}  // namespace sheerlap

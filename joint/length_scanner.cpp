#include "joint/length_scanner.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_space(char c) { return c == ' ' || c == '\t'; }

enum class UnitKind { Metric, Inch, Foot };

struct Unit {
  std::string_view word;
  UnitKind kind;
  double mm;
};

constexpr std::array units{
    Unit{"mm", UnitKind::Metric, 1},     Unit{"cm", UnitKind::Metric, 10},
    Unit{"m", UnitKind::Metric, 1000},   Unit{"in", UnitKind::Inch, 25.4},
    Unit{"inch", UnitKind::Inch, 25.4},  Unit{"inches", UnitKind::Inch, 25.4},
    Unit{"\"", UnitKind::Inch, 25.4},    Unit{"ft", UnitKind::Foot, 304.8},
    Unit{"foot", UnitKind::Foot, 304.8}, Unit{"feet", UnitKind::Foot, 304.8},
    Unit{"'", UnitKind::Foot, 304.8}};

constexpr Unit millimetre = units[0];
constexpr Unit inch = units[3];

const Unit* unit_named(std::string_view word) {
  const auto same = [](char a, char b) {
    return a == b || (is_letter(a) && is_letter(b) && (a | 0x20) == (b | 0x20));
  };
  const auto found = std::find_if(units.begin(), units.end(), [&](const Unit& unit) {
    return std::equal(unit.word.begin(), unit.word.end(), word.begin(), word.end(),
                      same);
  });
  return found == units.end() ? nullptr : &*found;
}

/// How many of a unit, and how that was written.
struct Amount {
  double value = 0;
  bool whole = true;
  bool fraction = false;
};

/// Reads one length from left to right.
class LengthScanner {
 public:
  /// @param text  without the spaces about it
  LengthScanner(std::string_view text, LengthUnit bare) : text_(text), rest_(text) {
    bare_ = bare == LengthUnit::Inches ? inch : millimetre;
  }

  Result<Length> length() {
    const double sign = take('-') ? -1 : 1;
    if (sign > 0) take('+');
    skip_spaces();
    const auto size = is_offset_notation() ? offset_notation() : with_unit();
    if (!size) return tl::unexpected(size.error());
    if (!(*size <= longest_length.in_mm()))
      return refused("is out of range: at most 1 km either way");
    return Length::mm(sign * *size);
  }

 private:
  tl::unexpected<Errors> refused(std::string_view why) const {
    return invalid_input("", fmt::format("{} {}", quoted_text(text_), why));
  }

  tl::unexpected<Errors> not_a_length() const {
    return refused(
        "is not a length: write a number, a number with its unit (mm, cm, m, in or "
        "ft), or feet-inches-eighths such as \"3-4-5\"");
  }

  bool take(char c) {
    if (rest_.empty() || rest_.front() != c) return false;
    rest_.remove_prefix(1);
    return true;
  }

  void skip_spaces() {
    while (!rest_.empty() && is_space(rest_.front())) rest_.remove_prefix(1);
  }

  std::string_view take_digits() {
    std::size_t length = 0;
    while (length < rest_.size() && is_digit(rest_[length])) ++length;
    const std::string_view digits = rest_.substr(0, length);
    rest_.remove_prefix(length);
    return digits;
  }

  /// The number that digits make; infinite if there are too many of them.
  static double number_of(std::string_view digits) {
    double number = 0;
    const auto end =
        std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return end.ec == std::errc() ? number : HUGE_VAL;
  }

  /// Whether digits-digits is what comes next: two parts at least.
  bool is_offset_notation() const {
    const auto end = std::find_if_not(rest_.begin(), rest_.end(), is_digit);
    return end != rest_.begin() && rest_.end() - end >= 2 && *end == '-' &&
           is_digit(*(end + 1)) && rest_.find('/') == std::string_view::npos;
  }

  /// Feet-inches-eighths, in mm.
  Result<double> offset_notation() {
    const double feet = number_of(take_digits());
    take('-');
    const double inches = number_of(take_digits());
    if (rest_.empty())
      return refused("has two parts: feet-inches-eighths has three, such as \"3-4-0\"");
    if (!take('-')) return not_a_length();
    const std::string_view digits = take_digits();
    if (digits.empty()) return not_a_length();
    const double eighths = number_of(digits);
    const double sixteenths = take('+') ? 1 : take('-') ? -1 : 0;
    if (!rest_.empty()) return not_a_length();
    if (inches > 11) return refused(fmt::format("has {} inches: 0 to 11", inches));
    if (eighths > 7) return refused(fmt::format("has {} eighths: 0 to 7", eighths));
    return (feet * 12 + inches + eighths / 8 + sixteenths / 16) * inch.mm;
  }

  /// One amount with its unit, or feet and inches, in mm.
  Result<double> with_unit() {
    const auto first = amount();
    if (!first) return tl::unexpected(first.error());
    skip_spaces();
    const auto unit = rest_.empty() ? Result<Unit>(bare_) : take_unit();
    if (!unit) return tl::unexpected(unit.error());
    if (first->fraction && unit->kind == UnitKind::Metric)
      return refused("has a fraction: it goes with in or ft, as in \"1/4 in\"");
    skip_spaces();
    if (rest_.empty()) return first->value * unit->mm;
    if (unit->kind != UnitKind::Foot || !first->whole) return not_a_length();
    const auto inches = inches_after_feet();
    if (!inches) return tl::unexpected(inches.error());
    return (first->value * 12 + *inches) * inch.mm;
  }

  Result<double> inches_after_feet() {
    take('-');
    skip_spaces();
    const auto second = amount();
    if (!second) return tl::unexpected(second.error());
    skip_spaces();
    if (rest_.empty())
      return refused("ends without a unit: write in or \" after the inches");
    if (is_digit(rest_.front()))
      return refused("has two numbers for the inches: a fraction is written 1/2");
    const auto unit = take_unit();
    if (!unit) return tl::unexpected(unit.error());
    if (!rest_.empty() || unit->kind != UnitKind::Inch) return not_a_length();
    if (!(second->value < 12))
      return refused(
          fmt::format("has {} inches after the feet: less than 12", second->value));
    return second->value;
  }

  Result<Unit> take_unit() {
    const auto end = std::find_if_not(rest_.begin(), rest_.end(), is_letter);
    const std::size_t letters = static_cast<std::size_t>(end - rest_.begin());
    const std::string_view word = rest_.substr(0, std::max<std::size_t>(letters, 1));
    const Unit* unit = unit_named(word);
    if (unit == nullptr && letters > 0)
      return refused(
          fmt::format("has the unit {}: mm, cm, m, in or ft", quoted_text(word)));
    if (unit == nullptr) return not_a_length();
    rest_.remove_prefix(word.size());
    return *unit;
  }

  /// A decimal number, a fraction, or a whole number and a fraction.
  Result<Amount> amount() {
    if (rest_.empty() || !(is_digit(rest_.front()) || rest_.front() == '.'))
      return not_a_length();
    const std::string_view start = rest_;
    const std::string_view digits = take_digits();
    if (!digits.empty() && take('/')) return fraction(0, digits);
    if (const auto top = mixed_fraction_top(digits))
      return fraction(number_of(digits), *top);
    rest_ = start;
    double value = 0;
    const auto end = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value);
    if (end.ec == std::errc::invalid_argument) return not_a_length();
    if (end.ec != std::errc()) value = HUGE_VAL;
    rest_.remove_prefix(static_cast<std::size_t>(end.ptr - rest_.data()));
    if (!rest_.empty() && rest_.front() == ',')
      return refused("has a comma: write a decimal point, and no thousands mark");
    return Amount{value, value == std::floor(value), false};
  }

  /// The top of a fraction that follows a whole number, with " " or "-" between.
  std::optional<std::string_view> mixed_fraction_top(std::string_view whole) {
    if (whole.empty()) return std::nullopt;
    const std::string_view start = rest_;
    skip_spaces();
    if (rest_.size() == start.size()) take('-');
    const std::string_view digits = take_digits();
    if (rest_.size() < start.size() && !digits.empty() && take('/')) return digits;
    rest_ = start;
    return std::nullopt;
  }

  Result<Amount> fraction(double whole, std::string_view top) {
    const std::string_view bottom = take_digits();
    if (bottom.empty()) return not_a_length();
    if (number_of(bottom) == 0)
      return refused(fmt::format("divides by zero: {}/{}", top, bottom));
    const double part = number_of(top) / number_of(bottom);
    if (whole > 0 && !(part < 1))
      return refused(
          fmt::format("has the fraction {}/{} after a whole number: less "
                      "than 1",
                      top, bottom));
    return Amount{whole + part, false, true};
  }

  std::string_view text_;
  std::string_view rest_;
  Unit bare_ = millimetre;
};

}  // namespace

Result<Length> scanned_length(std::string_view text, LengthUnit unit) {
  return LengthScanner(text, unit).length();
}

}  // namespace sheerlap

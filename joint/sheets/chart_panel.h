#pragma once

#include <cstddef>
#include <set>
#include <string>
#include <vector>

namespace sheerlap {

/// A line of lettering in SVG.
/// @param attributes  more of the element's attributes, each with a blank before it
std::string svg_text(double x,
                     double y,
                     const std::string& text,
                     const char* attributes = "");

/// A step of 1, 2 or 5 times a power of ten that divides a span into five at most, or
/// nearly so.
/// @param span  > 0
double tick_step(double span);

/// A range of values.
struct ValueRange {
  double low = 0;
  double high = 0;
};

/// One chart of a drawing in SVG, whose lengths are mm: values over the boats in order.
///
/// Its classes are frame, thin, line and point, and those given for levels.
class ChartPanel {
 public:
  static constexpr double left = 22;
  static constexpr double right = 176;

  /// @param top, bottom  of the panel on the drawing
  /// @param values       what is to be in its range
  /// @param boats        at least 1
  ChartPanel(double top, double bottom, ValueRange values, std::size_t boats);

  double x(std::size_t boat) const;
  double y(double value) const;

  /// Its frame, ticks with their numbers, and its name.
  std::string frame(const std::string& name) const;
  /// A level line with its name at the right; nothing if it is beyond the range.
  std::string level(double value, const char* kind, const std::string& name) const;
  /// A line through the values, with a square at each that is marked, and a circle at
  /// the others where there is room.
  ///
  /// @param first  the boat of the first value
  std::string series(const std::vector<double>& values,
                     std::size_t first,
                     const std::set<std::size_t>& marked) const;

 private:
  double top_, bottom_;
  ValueRange values_;
  std::size_t boats_;
};

}  // namespace sheerlap

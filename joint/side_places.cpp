#include <fmt/format.h>

#include <cmath>

#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// The girths at which the drill line has the x given.
std::vector<Length> girths_at_x(const PerimeterSide& side, double x_mm) {
  std::vector<Length> girths;
  const SideLine& drill = side.drill_line;
  const auto x_at = [&](double girth) {
    return drill.line().at(drill.place_at(Length::mm(girth))).point.x() - x_mm;
  };
  for (std::size_t k = 0; k < drill.path().span_count; ++k) {
    double from = drill.girth_at_span(k).in_mm();
    double to = drill.girth_at_span(k + 1).in_mm();
    const bool last = k + 1 == drill.path().span_count;
    const double at_from = x_at(from);
    const double at_to = x_at(to);
    if (!(at_from * at_to < 0 || at_from == 0 || (last && at_to == 0))) continue;
    for (int step = 0; step < 70 && at_from != 0; ++step) {
      const double middle = (from + to) / 2;
      (x_at(middle) * at_from > 0 ? from : to) = middle;
    }
    girths.push_back(Length::mm(from));
  }
  return girths;
}

/// Where a thing stands on a side, and how messages name both.
struct Position {
  Length value;
  bool by_x;
  std::string where, what;
};

Result<Length> girth_of(const PerimeterSide& side, const Position& position) {
  const Length value = position.value;
  const double length = side.drill_line_length.in_mm();
  if (!position.by_x) {
    if (value.in_mm() >= -1e-9 && value.in_mm() <= length + 1e-6)
      return std::min(std::max(value, Length()), side.drill_line_length);
    return invalid_input(
        position.where,
        fmt::format("{}: {:.1f} mm is off the end of the {} drill line: 0 to {:.1f} mm",
                    position.what, value.in_mm(), side_word(side.name), length));
  }
  const auto girths = girths_at_x(side, value.in_mm());
  if (girths.size() == 1) return girths.front();
  return invalid_input(
      position.where,
      fmt::format("{}: x = {:.1f} mm is met {} on the {} drill line: give the running "
                  "girth in its place, 0 to {:.1f} mm",
                  position.what, value.in_mm(),
                  girths.empty() ? "nowhere" : "more than once", side_word(side.name),
                  length));
}

}  // namespace

std::string side_word(SideName name) {
  switch (name) {
    case SideName::Starboard:
      return "starboard";
    case SideName::Port:
      return "port";
    case SideName::Transom:
      break;
  }
  return "transom";
}

bool stands_on(SideChoice choice, SideName name) {
  switch (choice) {
    case SideChoice::Starboard:
      return name == SideName::Starboard;
    case SideChoice::Port:
      return name == SideName::Port;
    case SideChoice::Transom:
      return name == SideName::Transom;
    case SideChoice::Both:
      break;
  }
  return name != SideName::Transom;
}

Result<std::pair<Length, Length>> stretch_on(const PerimeterSide& side,
                                             const Stretch& stretch,
                                             const std::string& where,
                                             const std::string& what) {
  const std::string axis = stretch.by_x ? ".x_" : ".";
  const auto end = [&](Length value, const char* key) {
    return girth_of(side, {value, stretch.by_x, where + axis + key, what});
  };
  const auto from = end(stretch.from, "from");
  const auto to = end(stretch.to, "to");
  Errors errors;
  if (!from) errors.insert(errors.end(), from.error().begin(), from.error().end());
  if (!to) errors.insert(errors.end(), to.error().begin(), to.error().end());
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return std::minmax(*from, *to);
}

Result<Length> place_on(const PerimeterSide& side,
                        const FixedPlace& place,
                        const std::string& where) {
  return girth_of(side, {place.at, place.by_x, where + (place.by_x ? ".x" : ".at"),
                         "place " + place.what});
}

}  // namespace sheerlap

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

#include "joint/perimeter.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

/// The parameters of a span of a line between which its x runs one way.
std::vector<double> turns_of_x(const FaceLine& line, std::size_t span) {
  constexpr int samples = 8;
  const double begin = line.begin_u_mm(span);
  const double end = line.end_u_mm(span);
  const auto slope = [&](double u) { return line.at({span, u}).by_u.x(); };
  std::vector<double> turns{begin};
  for (int i = 0; i < samples; ++i) {
    double from = begin + (end - begin) * i / samples;
    double to = begin + (end - begin) * (i + 1) / samples;
    const bool aft = slope(from) > 0;
    if ((slope(to) > 0) == aft) continue;
    for (int step = 0; step < 60; ++step) {
      const double middle = (from + to) / 2;
      ((slope(middle) > 0) == aft ? from : to) = middle;
    }
    turns.push_back((from + to) / 2);
  }
  turns.push_back(end);
  return turns;
}

/// The girths at which a line along a side has the x given.
std::vector<Length> girths_at_x(const SideLine& along, double x_mm) {
  std::vector<Length> girths;
  const FaceLine& line = along.line();
  const auto add = [&](Length girth) {
    // a knot is met from both of its spans
    if (girths.empty() || std::abs((girth - girths.back()).in_mm()) > 1e-6)
      girths.push_back(girth);
  };
  for (std::size_t k = 0; k < along.path().span_count; ++k) {
    const std::size_t span = along.path().span(k, line.face().curve().spans());
    const auto past = [&](double u) { return line.at({span, u}).point.x() - x_mm; };
    std::vector<double> turns = turns_of_x(line, span);
    if (!along.path().forward) std::reverse(turns.begin(), turns.end());
    for (std::size_t i = 0; i + 1 < turns.size(); ++i) {
      double from = turns[i];
      double to = turns[i + 1];
      const double at_from = past(from);
      const double at_to = past(to);
      if (at_from == 0) add(along.girth_at({span, from}));
      if (at_to == 0) add(along.girth_at({span, to}));
      if (!(at_from * at_to < 0)) continue;
      for (int step = 0; step < 70; ++step) {
        const double middle = (from + to) / 2;
        (past(middle) * at_from > 0 ? from : to) = middle;
      }
      add(along.girth_at({span, from}));
    }
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
  const auto girths = girths_at_x(side.drill_line, value.in_mm());
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

std::string sides_words(const std::vector<SideName>& names) {
  assert(!names.empty());
  std::string words = side_word(names.front());
  for (std::size_t i = 1; i < names.size(); ++i)
    words += (i + 1 == names.size() ? " and " : ", ") + side_word(names[i]);
  return words;
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

Result<Length> sheer_girth_at_x(const PerimeterSide& side,
                                Length x,
                                const std::string& where) {
  const auto girths = girths_at_x(side.sheer, x.in_mm());
  if (girths.size() == 1) return girths.front();
  return invalid_input(
      where, fmt::format("x = {:.1f} mm is met {} on the {} sheer: one that "
                         "the side passes once",
                         x.in_mm(), girths.empty() ? "nowhere" : "more than once",
                         side_word(side.name)));
}

Place place_on_sheer(const PerimeterSide& side, Length girth) {
  Place place = side.drill_line.place_at(girth);
  const Curve& curve = side.sheer.line().face().curve();
  place.u_mm = std::clamp(place.u_mm, 0.0, curve.chord_mm(place.span));
  return place;
}

Length drill_girth(const PerimeterSide& side, Place place) {
  return std::clamp(side.drill_line.girth_at(place), Length(), side.drill_line_length);
}

}  // namespace sheerlap

#include "joint/check_lines.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <limits>
#include <utility>

#include "joint/side_ends.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

constexpr const char* by_girth = "girth on the drill line";
constexpr const char* straight = "straight";

/// Holes whose girths differ by no more than this mirror each other.
constexpr double mirrored_within_mm = 0.01;

/// The stations of one side.
struct SideHoles {
  const PerimeterSide& side;
  std::vector<const DrillStation*> holes;
};

SideHoles holes_of(const PerimeterSide& side,
                   const std::vector<DrillStation>& stations) {
  SideHoles result{side, {}};
  for (const DrillStation& station : stations)
    if (station.side == side.name) result.holes.push_back(&station);
  return result;
}

std::string closing_words(std::size_t holes) {
  const std::size_t pitches = holes - 1;
  return fmt::format("closing space after {} pitch{} and the start", pitches,
                     pitches == 1 ? "" : "es");
}

void add_closure(std::vector<CheckLine>& lines,
                 const SideHoles& on,
                 const std::string& end) {
  const SideName name = on.side.name;
  const Length length = on.side.drill_line_length;
  lines.push_back(
      {name, "length of the side", start_word(on.side), end, length, by_girth});
  if (!on.holes.empty())
    lines.push_back({name, closing_words(on.holes.size()), on.holes.back()->mark, end,
                     length - on.holes.back()->girth, by_girth});
}

void add_fifths(std::vector<CheckLine>& lines, const SideHoles& on) {
  for (std::size_t i = 4; i < on.holes.size(); i += 5) {
    const DrillStation& hole = *on.holes[i];
    lines.push_back({on.side.name, "running dimension", start_word(on.side), hole.mark,
                     hole.girth, by_girth});
    if (i < 5) continue;
    const DrillStation& before = *on.holes[i - 5];
    if (parted(on.side, before.girth, hole.girth)) continue;
    lines.push_back({on.side.name, "five pitches", before.mark, hole.mark,
                     Length::mm((hole.point - before.point).norm()), straight});
  }
}

/// A place of a side from which the holes beside it are measured.
struct FixedPoint {
  Length before;  ///< where the stretch before it stops
  Length after;   ///< where the stretch after it starts
  std::string what;
};

std::vector<FixedPoint> fixed_points(const PerimeterSide& side,
                                     const std::string& end) {
  std::vector<FixedPoint> points{{Length(), Length(), start_word(side)}};
  for (const InnerCorner& corner : side.corners)
    points.push_back(
        {corner.girth, corner.girth, "corner at girth " + worded(corner.girth)});
  for (const OpeningSpan& opening : side.openings)
    points.push_back({opening.from, opening.to, opening.what});
  points.push_back({side.drill_line_length, side.drill_line_length, end});
  std::sort(points.begin(), points.end(),
            [](const auto& a, const auto& b) { return a.before < b.before; });
  return points;
}

/// The distances of the outer holes of each stretch from the points that bound it.
void add_end_distances(std::vector<CheckLine>& lines,
                       const SideHoles& on,
                       const std::string& end) {
  const auto points = fixed_points(on.side, end);
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const auto within = [&](const DrillStation* hole) {
      return hole->girth >= points[i].after && hole->girth <= points[i + 1].before;
    };
    const auto first = std::find_if(on.holes.begin(), on.holes.end(), within);
    const auto last = std::find_if(on.holes.rbegin(), on.holes.rend(), within);
    if (first == on.holes.end()) continue;
    lines.push_back({on.side.name, "first hole of a stretch", points[i].what,
                     (*first)->mark, (*first)->girth - points[i].after, by_girth});
    lines.push_back({on.side.name, "last hole of a stretch", (*last)->mark,
                     points[i + 1].what, points[i + 1].before - (*last)->girth,
                     by_girth});
  }
}

void add_length_overall(std::vector<CheckLine>& lines,
                        const PerimeterSide& side,
                        const std::string& end) {
  const Point3 from = on_drill_line(side, Length());
  const Point3 to = on_drill_line(side, side.drill_line_length);
  lines.push_back({side.name, "end to end of the side", start_word(side), end,
                   Length::mm((to - from).norm()), straight});
}

/// The greatest distance of the drill line from the chord between two girths.
///
/// Looked for at even steps of each span, then about the furthest of them.
Length sagitta(const PerimeterSide& side, Length from, Length to) {
  const SideLine& drill_line = side.drill_line;
  const FaceLine& line = drill_line.line();
  const Place start = drill_line.place_at(from);
  const Place stop = drill_line.place_at(to);
  const Point3 origin = line.at(start).point;
  const Vector3 along = (line.at(stop).point - origin).normalized();
  const auto nearness = [&](Place place) {
    const Vector3 off = line.at(place).point - origin;
    return -(off - off.dot(along) * along).norm();
  };
  constexpr int steps = 16;
  double nearest = 0;
  for (std::size_t k = drill_line.index_of(start.span);
       k <= drill_line.index_of(stop.span); ++k) {
    const std::size_t span = drill_line.path().span(k, line.face().curve().spans());
    double low = line.begin_u_mm(span);
    double high = line.end_u_mm(span);
    const bool forward = drill_line.path().forward;
    if (span == start.span) (forward ? low : high) = start.u_mm;
    if (span == stop.span) (forward ? high : low) = stop.u_mm;
    const double step = (high - low) / steps;
    int best = 0;
    for (int i = 1; i <= steps; ++i)
      if (nearness({span, low + i * step}) < nearness({span, low + best * step}))
        best = i;
    const auto by_u = [&](double u) { return nearness({span, u}); };
    const int bits = std::numeric_limits<double>::digits / 2;
    const auto found = boost::math::tools::brent_find_minima(
        by_u, low + std::max(0, best - 1) * step,
        low + std::min(steps, best + 1) * step, bits);
    nearest = std::min(nearest, found.second);
  }
  return Length::mm(-nearest);
}

void add_jig(std::vector<CheckLine>& lines,
             const PerimeterSide& side,
             const DrillStation& first,
             const DrillStation& last,
             const std::string& name) {
  lines.push_back({side.name, name + ", end to end", first.mark, last.mark,
                   Length::mm((last.point - first.point).norm()), straight});
  lines.push_back({side.name, name + ", greatest offset of the drill line", first.mark,
                   last.mark, sagitta(side, first.girth, last.girth), straight});
}

/// The indices of a hole a quarter of the way along and of the last one, on starboard
/// and on port: holes that mirror each other if there are two such pairs.
using Indices = std::array<std::size_t, 2>;
std::pair<Indices, Indices> diagonal_ends(const SideHoles& starboard,
                                          const SideHoles& port) {
  std::vector<Indices> mirrored;
  for (std::size_t s = 0, p = 0; s < starboard.holes.size() && p < port.holes.size();) {
    const double apart = (starboard.holes[s]->girth - port.holes[p]->girth).in_mm();
    if (std::abs(apart) <= mirrored_within_mm)
      mirrored.push_back({s++, p++});
    else
      ++(apart < 0 ? s : p);
  }
  if (mirrored.size() >= 2) return {mirrored[mirrored.size() / 4], mirrored.back()};
  return {{starboard.holes.size() / 4, port.holes.size() / 4},
          {starboard.holes.size() - 1, port.holes.size() - 1}};
}

void add_diagonals(std::vector<CheckLine>& lines,
                   const SideHoles& starboard,
                   const SideHoles& port) {
  if (starboard.holes.size() < 2 || port.holes.size() < 2) return;
  const auto [fore, aft] = diagonal_ends(starboard, port);
  const auto add = [&](const DrillStation& from, const DrillStation& to) {
    lines.push_back({from.side, "diagonal across the boat", from.mark, to.mark,
                     Length::mm((to.point - from.point).norm()), straight});
  };
  add(*starboard.holes[fore[0]], *port.holes[aft[1]]);
  add(*port.holes[fore[1]], *starboard.holes[aft[0]]);
}

}  // namespace

std::vector<CheckLine> check_lines(const Perimeter& perimeter,
                                   const std::vector<DrillStation>& stations,
                                   const std::vector<JigSegment>& jigs) {
  std::vector<CheckLine> lines;
  for (const PerimeterSide& side : perimeter.sides) {
    const SideHoles on = holes_of(side, stations);
    const std::string end = end_word(side);
    add_closure(lines, on, end);
    add_fifths(lines, on);
    add_end_distances(lines, on, end);
    add_length_overall(lines, side, end);
    for (const JigSegment& jig : jigs)
      if (jig.side == side.name && jig.last > jig.first)
        add_jig(lines, side, stations[jig.first], stations[jig.last], jig.name);
  }
  const PerimeterSide* starboard = perimeter.side(SideName::Starboard);
  const PerimeterSide* port = perimeter.side(SideName::Port);
  if (starboard != nullptr && port != nullptr)
    add_diagonals(lines, holes_of(*starboard, stations), holes_of(*port, stations));
  return lines;
}

}  // namespace sheerlap

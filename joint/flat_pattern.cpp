#include "joint/flat_pattern.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

/// The parts of the drill line between two places, cut at the places between them, in
/// the curve's own direction. A side has a span once: places of one span that rounding
/// has put in the wrong order are one.
std::vector<LinePart> parts_between(const SideLine& drill_line,
                                    const std::vector<Place>& places) {
  const FaceLine& line = drill_line.line();
  const std::size_t spans = line.face().curve().spans();
  std::vector<LinePart> parts;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const Place& from = places[i];
    const Place& to = places[i + 1];
    if (from.span == to.span) {
      parts.push_back({from.span, from.u_mm, std::max(from.u_mm, to.u_mm)});
      continue;
    }
    parts.push_back({from.span, from.u_mm, line.end_u_mm(from.span)});
    for (std::size_t span = (from.span + 1) % spans; span != to.span;
         span = (span + 1) % spans)
      parts.push_back({span, line.begin_u_mm(span), line.end_u_mm(span)});
    parts.push_back({to.span, line.begin_u_mm(to.span), to.u_mm});
  }
  return parts;
}

/// One ruling for the two that parts of the line have in common, half way between them:
/// a sheet with a thickness comes to a hollow's fold from both sides beyond it.
void join_parts(std::vector<FlatRuling>& rulings) {
  const auto middle = [](const auto& one, const auto& other) {
    return ((one + other) / 2).eval();
  };
  std::size_t kept = 0;
  for (std::size_t i = 1; i < rulings.size(); ++i) {
    FlatRuling& last = rulings[kept];
    const FlatRuling& next = rulings[i];
    if (next.part == last.part || next.run_mm > last.run_mm) {
      rulings[++kept] = next;
      continue;
    }
    last.part = next.part;
    last.bent_mm = (last.bent_mm + next.bent_mm) / 2;
    last.line = middle(last.line, next.line);
    last.top = middle(last.top, next.top);
    last.low = middle(last.low, next.low);
  }
  rulings.resize(kept + 1);
}

/// The ruling of a strip nearest to a run along its line: each hole has one of its own.
const FlatRuling& ruling_at(const std::vector<FlatRuling>& rulings, double run_mm) {
  const auto after = std::lower_bound(
      rulings.begin(), rulings.end(), run_mm,
      [](const FlatRuling& ruling, double run) { return ruling.run_mm < run; });
  if (after == rulings.begin()) return *after;
  if (after == rulings.end()) return rulings.back();
  const auto before = after - 1;
  return run_mm - before->run_mm < after->run_mm - run_mm ? *before : *after;
}

/// How a strip is put onto the drawing: turned, moved and, if need be, mirrored.
class Pose {
 public:
  /// @param along  1 where the drawing's x runs with the curve, -1 against it
  Pose(const Point2& first, const Point2& last, double along) : origin_(first) {
    mirror_ = Vector2(along, 1).asDiagonal();
    const Vector2 chord = mirror_ * (last - first);
    // level with the way it runs kept: a single hole keeps the strip as it lies
    const double angle = chord.norm() > 0
                             ? std::atan2(chord.y(), chord.x()) -
                                   (chord.x() < 0 ? std::copysign(M_PI, chord.y()) : 0)
                             : 0;
    turn_ = Eigen::Rotation2Dd(-angle).toRotationMatrix();
  }
  Point2 operator()(const Point2& point) const {
    return turn_ * mirror_ * (point - origin_);
  }

 private:
  Point2 origin_;
  Eigen::Matrix2d mirror_, turn_;
};

}  // namespace

bool FlatPattern::runs_left() const {
  return (side != SideName::Port) == (seen_from == PlateSide::Outer);
}

FlatPattern flat_pattern(const Perimeter& perimeter,
                         const std::vector<DrillStation>& stations,
                         const FlatStretch& stretch,
                         const JigRules& sheet) {
  const PerimeterSide& side = *perimeter.side(stations[stretch.first].side);
  const SideLine& drill_line = side.drill_line;
  std::vector<Place> places{drill_line.place_at(stretch.from)};
  for (std::size_t i = stretch.first; i <= stretch.last; ++i)
    places.push_back(drill_line.place_at(stations[i].girth));
  places.push_back(drill_line.place_at(stretch.to));
  const bool forward = drill_line.path().forward;
  if (!forward) std::reverse(places.begin(), places.end());
  FlatStrip strip = flat_strip(drill_line.line(), parts_between(drill_line, places),
                               sheet.plate.in_mm());
  std::vector<FlatRuling>& rulings = strip.rulings;
  join_parts(rulings);
  if (!forward) {
    const double run = rulings.back().run_mm;
    const double bent = rulings.back().bent_mm;
    std::reverse(rulings.begin(), rulings.end());
    for (FlatRuling& ruling : rulings) {
      ruling.run_mm = run - ruling.run_mm;
      ruling.bent_mm = bent - ruling.bent_mm;
    }
  }
  FlatPattern pattern;
  pattern.side = side.name;
  pattern.seen_from = sheet.marks;
  std::vector<const FlatRuling*> at_holes;
  for (std::size_t i = stretch.first; i <= stretch.last; ++i)
    at_holes.push_back(&ruling_at(rulings, (stations[i].girth - stretch.from).in_mm()));
  const FlatRuling& first = *at_holes.front();
  // outside is seen against the curve's way: it runs clockwise, so from right to left
  const Pose pose(first.line, at_holes.back()->line,
                  sheet.marks == PlateSide::Outer ? -1 : 1);
  for (std::size_t i = stretch.first; i <= stretch.last; ++i) {
    const FlatRuling& ruling = *at_holes[i - stretch.first];
    pattern.holes.push_back(
        {i, pose(ruling.line),
         Length::mm(ruling.run_mm + ruling.bent_mm - first.run_mm - first.bent_mm)});
  }
  for (const FlatRuling& ruling : rulings) {
    pattern.drill_line.push_back(pose(ruling.line));
    pattern.top.push_back(pose(ruling.top));
    pattern.low.push_back(pose(ruling.low));
  }
  pattern.longer = pattern.holes.back().flat -
                   (stations[stretch.last].girth - stations[stretch.first].girth);
  pattern.distortion = strip.distortion;
  const double half = sheet.plate.in_mm() / 2;
  pattern.fibre_strain = half * std::max(strip.sharpest_convex, strip.sharpest_hollow);
  // bent about its middle, the side of a plate that faces a hollow's middle is gone
  // where the radius is no more than the thickness
  pattern.too_thick = sheet.plate.in_mm() * strip.sharpest_hollow >= 1;
  return pattern;
}

namespace {

/// The stretches of a side between its corners and openings.
std::vector<std::pair<Length, Length>> unbroken(const PerimeterSide& side) {
  std::vector<std::pair<Length, Length>> gone;
  for (const InnerCorner& corner : side.corners)
    gone.emplace_back(corner.girth, corner.girth);
  for (const OpeningSpan& opening : side.openings)
    gone.emplace_back(opening.from, opening.to);
  std::sort(gone.begin(), gone.end());
  std::vector<std::pair<Length, Length>> left;
  Length from;
  for (const auto& [begin, end] : gone) {
    if (begin > from) left.emplace_back(from, begin);
    from = std::max(from, end);
  }
  if (side.drill_line_length > from) left.emplace_back(from, side.drill_line_length);
  return left;
}

}  // namespace

FlatStretch jig_stretch(const Perimeter& perimeter,
                        const std::vector<DrillStation>& stations,
                        std::size_t first,
                        std::size_t last,
                        const JigRules& rules) {
  const Length begin = stations[first].girth;
  const Length end = stations[last].girth;
  for (const auto& [from, to] : unbroken(*perimeter.side(stations[first].side)))
    if (from <= begin && end <= to)
      return {first, last, std::max(from, begin - rules.bush),
              std::min(to, end + rules.bush)};
  return {first, last, begin, end};
}

std::vector<FlatStretch> strip_stretches(const PerimeterSide& side,
                                         const std::vector<DrillStation>& stations) {
  std::vector<FlatStretch> stretches;
  for (const auto& [from, to] : unbroken(side)) {
    const auto within = [&](const DrillStation& station) {
      return station.side == side.name && station.girth >= from && station.girth <= to;
    };
    const auto first = std::find_if(stations.begin(), stations.end(), within);
    if (first == stations.end()) continue;
    const auto last = std::find_if_not(first, stations.end(), within);
    stretches.push_back({static_cast<std::size_t>(first - stations.begin()),
                         static_cast<std::size_t>(last - stations.begin()) - 1, from,
                         to});
  }
  return stretches;
}

}  // namespace sheerlap

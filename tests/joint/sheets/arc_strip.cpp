#include "tests/joint/sheets/arc_strip.h"

#include <cmath>

namespace sheerlap {
namespace {

/// A point that is so far along the drill line and so far up from it.
Point2 arc_point(const ArcStrip& arc, double along, double up) {
  const double way = arc.side == SideName::Port ? 1 : -1;
  if (arc.radius_mm == 0) return {way * along, up};
  const double angle = along / arc.radius_mm;
  const double radius = arc.radius_mm - up;  // the middle is above the strip
  return {way * radius * std::sin(angle), arc.radius_mm - radius * std::cos(angle)};
}

}  // namespace

StripLine arc_strip(const ArcStrip& arc) {
  FlatPattern pattern;
  pattern.side = arc.side;
  const int count = static_cast<int>(std::ceil(arc.length_mm / 2));
  for (int i = 0; i <= count; ++i) {
    const double along = arc.length_mm * i / count;
    pattern.drill_line.push_back(arc_point(arc, along, 0));
    pattern.top.push_back(arc_point(arc, along, arc.above_mm));
    pattern.low.push_back(arc_point(arc, along, -arc.below_mm));
  }
  return {pattern,
          {0, 0, arc_strip_start, arc_strip_start + Length::mm(arc.length_mm)}};
}

}  // namespace sheerlap

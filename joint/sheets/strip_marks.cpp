#include <cmath>

#include "joint/sheets/strip_drawing.h"

namespace sheerlap {
namespace {

/// The arms of a hole's cross end this far beyond its circle.
constexpr double arm_beyond_mm = 4;
/// The middle left clear, from the hole's centre.
constexpr double clear_middle_mm = 0.7;
constexpr double bar_mm = 6.5;

Vector2 way(double degrees) {
  const double angle = Angle::degrees(degrees).in_radians();
  return {std::cos(angle), -std::sin(angle)};
}

}  // namespace

void draw_strip_hole(Page& page,
                     Point2 at,
                     const StripHole& hole,
                     double turn_degrees) {
  const double radius = hole.diameter.in_mm() / 2;
  if (!hole.drillable) {
    page.circle(at, radius, {.dash = Dash::Dashed});
    for (const double turn : {45.0, 135.0})
      page.line(at - bar_mm * way(turn_degrees + turn),
                at + bar_mm * way(turn_degrees + turn),
                {.width_mm = 2 * line_width::heavy});
    return;
  }
  page.disc(at, radius, shade::white);  // the drill line and hatching end at it
  page.circle(at, radius);
  for (const double turn : {0.0, 90.0, 180.0, 270.0}) {
    const Vector2 arm = way(turn_degrees + turn);
    page.line(at + clear_middle_mm * arm, at + (radius + arm_beyond_mm) * arm);
  }
}

void draw_register_mark(Page& page, Point2 at) {
  constexpr double inner_mm = 1.7;
  constexpr int steps = 8;
  for (const double start : {0.0, 180.0}) {
    std::vector<Point2> quadrant{at};
    for (int i = 0; i <= steps; ++i)
      quadrant.push_back(at + inner_mm * way(start + 90.0 * i / steps));
    page.fill(quadrant);
  }
  page.circle(at, inner_mm);
  for (const double turn : {0.0, 90.0})
    page.line(at - strip_room::mark_radius_mm * way(turn),
              at + strip_room::mark_radius_mm * way(turn));
}

Hatch band_hatch(StripBand::Kind kind) {
  if (kind == StripBand::Kind::KeepOut) return {.spacing_mm = 4, .turn_degrees = 45};
  return {.spacing_mm = 8, .turn_degrees = 120};
}

}  // namespace sheerlap

#include "geometry/mitre.h"

#include <fmt/format.h>

#include <Eigen/LU>
#include <cmath>
#include <numbers>

#include "geometry/quadrature.h"

namespace sheerlap {
namespace {

/// The plan of a face's line at one depth.
struct PlanLine {
  const RuledFace& face;
  double depth_mm;

  FacePoint at(Place place) const { return face.at(place, depth_mm); }
};

double cross(const Vector2& a, const Vector2& b) {
  return a.x() * b.y() - a.y() * b.x();
}

/// Twice the area swept about `centre` along the line from one parameter to another.
double swept_twice(const PlanLine& line,
                   const Point2& centre,
                   Place from,
                   double to_u) {
  const auto rate = [&](double u) {
    const FacePoint point = line.at({from.span, u});
    return cross(point.point.head<2>() - centre, point.by_u.head<2>());
  };
  return integral(rate, from.u_mm, to_u, line.face.variation(from.span));
}

}  // namespace

Result<Mitre> mitre(const RuledFace& face, std::size_t knot, double depth_mm) {
  const Curve& curve = face.curve();
  const PlanLine line{face, depth_mm};
  const std::size_t before = curve.span_before(knot);
  const double chord = curve.chord_mm(before);
  const PlanFrame end = plan_frame(curve.at({before, chord}));
  const PlanFrame start = plan_frame(curve.at({knot, 0}));
  const double turn =
      -std::atan2(cross(end.along, start.along), end.along.dot(start.along));
  const double reach = face.offset({knot, 0}, depth_mm).offset * std::tan(turn / 2);

  Mitre result{chord + reach / end.speed, -reach / start.speed, 0};
  for (int step = 0; step < 30; ++step) {
    const FacePoint a = line.at({before, result.end_u_mm});
    const FacePoint b = line.at({knot, result.start_u_mm});
    Eigen::Matrix2d slopes;
    slopes << a.by_u.head<2>(), -b.by_u.head<2>();
    if (std::abs(slopes.determinant()) < 1e-14) break;  // as good as no knuckle
    const Vector2 move = slopes.inverse() * (b.point - a.point).head<2>();
    result.end_u_mm += move.x();
    result.start_u_mm += move.y();
    if (move.norm() <= 1e-13 * (chord + curve.chord_mm(knot))) break;
  }
  if (!(result.end_u_mm > 0 && result.end_u_mm < 1e3 * chord &&
        result.start_u_mm < curve.chord_mm(knot)))
    return invalid_input(
        fmt::format("knot[{}]", knot),
        fmt::format("the faces on both sides of this corner do not meet, {:.1f} mm off "
                    "a turn of {:.0f} degrees: a smaller offset, or longer chords from "
                    "the rows beside it",
                    face.offset({knot, 0}, depth_mm).offset,
                    turn * 180 / std::numbers::pi));

  const Point2 centre = curve.at({knot, 0}).point.head<2>();
  const double twice = swept_twice(line, centre, {before, chord}, result.end_u_mm) +
                       swept_twice(line, centre, {knot, result.start_u_mm}, 0);
  result.area_mm2 = -twice / 2;
  return result;
}

}  // namespace sheerlap

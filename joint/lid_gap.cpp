#include "joint/lid_gap.h"

#include <Eigen/Geometry>

#include "geometry/clearance.h"

namespace sheerlap {
namespace {

/// The moved hull face at a point: its outward normal before and after it is made a
/// unit.
struct MovedHull {
  Point3 point;
  Vector3 by_depth;
  Vector3 normal;
  double area_mm = 0;
};

MovedHull moved_hull(const LapPoint& at, const LidUnknowns& unknowns) {
  HullShift shift = at.free;
  for (std::size_t j = 0; j < at.squeezed.size(); ++j) {
    const double squeeze = unknowns[first_squeeze + static_cast<Eigen::Index>(j)];
    shift.y_mm += squeeze * at.squeezed[j].y_mm;
    shift.by_u += squeeze * at.squeezed[j].by_u;
  }
  MovedHull hull{at.hull.point, at.hull.by_depth, {}, 0};
  hull.point.y() += shift.y_mm;
  const Vector3 across =
      (at.hull.by_u + shift.by_u * Vector3::UnitY()).cross(at.hull.by_depth);
  hull.area_mm = across.norm();
  hull.normal = across / hull.area_mm;
  return hull;
}

/// What a mm of squeeze does to the gap, the lid at rest.
double squeeze_slope(const MovedHull& hull,
                     const HullShift& squeezed,
                     const Vector3& lip_normal,
                     double gap_mm) {
  const Vector3 across = squeezed.by_u * Vector3::UnitY().cross(hull.by_depth);
  const Vector3 turned =
      (across - hull.normal * hull.normal.dot(across)) / hull.area_mm;
  const Vector3 moved = squeezed.y_mm * Vector3::UnitY() + gap_mm * turned;
  return -lip_normal.dot(moved) / lip_normal.dot(hull.normal);
}

}  // namespace

std::optional<LidGap> lid_gap(const LapPoint& point,
                              const RuledFace& lip,
                              const LidDatum& datum,
                              const LidUnknowns& unknowns) {
  const MovedHull hull = moved_hull(point, unknowns);
  const Eigen::AngleAxisd turn(unknowns[lid_turn] / datum.reach_mm, Vector3::UnitZ());
  const Vector3 pivot(datum.pivot.x(), datum.pivot.y(), 0);
  const Vector3 centre = pivot + Vector3(unknowns[lid_aft], unknowns[lid_starboard], 0);
  const auto hit = face_hit(lip, turn.inverse() * (hull.point - centre) + pivot,
                            turn.inverse() * hull.normal, point.place, point.depth_mm);
  if (!hit) return std::nullopt;
  const Vector3 normal = turn * lip.at(hit->place, hit->depth_mm).normal;
  const double facing = normal.dot(hull.normal);
  const Vector3 arm = hull.point + hit->distance_mm * hull.normal - centre;
  LidGap gap{hit->distance_mm, Eigen::VectorXd(unknowns.size())};
  gap.slope[lid_aft] = normal.x() / facing;
  gap.slope[lid_starboard] = normal.y() / facing;
  gap.slope[lid_turn] =
      normal.dot(Vector3::UnitZ().cross(arm)) / facing / datum.reach_mm;
  for (std::size_t j = 0; j < point.squeezed.size(); ++j)
    gap.slope[first_squeeze + static_cast<Eigen::Index>(j)] =
        squeeze_slope(hull, point.squeezed[j], normal, hit->distance_mm);
  return gap;
}

}  // namespace sheerlap

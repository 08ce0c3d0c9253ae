#include "joint/whole_errors.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <numbers>
#include <utility>

namespace sheerlap {
namespace {

/// The box about the sheer.
Eigen::AlignedBox3d sheer_box(const Curve& curve) {
  Eigen::AlignedBox3d box;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    for (const double u : {0.0, curve.chord_mm(span)})
      box.extend(curve.at({span, u}).point);
  return box;
}

/// A push at the middle, and none at the ends where nothing else holds them.
std::vector<HullPush> opening_pushes(const Perimeter& perimeter,
                                     double middle_mm,
                                     const std::string& where) {
  std::vector<HullPush> pushes{{Length::mm(middle_mm), Length::mm(1), where}};
  double end_mm = 1e300;
  for (const PerimeterSide& side : perimeter.sides) {
    if (side.end != SideEnd::End) continue;
    const Place end = side.sheer.place_at(side.sheer_length);
    end_mm = std::min(end_mm, perimeter.hull->curve().at(end).point.x());
  }
  // just short of it, so that both sides have it whatever their rounding
  if (end_mm < 1e300)
    pushes.push_back({Length::mm(end_mm - 1e-3), Length::mm(0), where});
  return pushes;
}

}  // namespace

bool varies_along(ProcessErrorKind kind) {
  return kind == ProcessErrorKind::HullTrim || kind == ProcessErrorKind::HullFace ||
         kind == ProcessErrorKind::LipThickness;
}

double gap_change(const BoatPoint& point, const FaceShift& hull, const Vector3& lip) {
  const FacePoint& face = point.lap.hull;
  const Vector3 across =
      hull.by_u.cross(face.by_depth) + face.by_u.cross(hull.by_depth);
  const Vector3 turned =
      (across - face.normal * face.normal.dot(across)) / face.area_mm();
  const Vector3 apart = lip - hull.moved - point.gap_mm * turned;
  return point.lip.normal.dot(apart) / point.facing();
}

WholeError::WholeError(ProcessErrorKind kind, const Perimeter& perimeter)
    : kind_(kind) {
  assert(!varies_along(kind));
  const auto box = sheer_box(perimeter.hull->curve());
  middle_ = box.center();
  middle_.y() = 0;
  length_mm_ = box.sizes().x();
}

Result<WholeError> WholeError::of(ProcessErrorKind kind,
                                  const Perimeter& perimeter,
                                  const std::string& where) {
  WholeError error(kind, perimeter);
  if (kind != ProcessErrorKind::HullOpening) return error;
  auto opening = HullMovement::through(
      perimeter, opening_pushes(perimeter, error.middle_.x(), where));
  if (!opening) return tl::unexpected(std::move(opening.error()));
  error.opening_ = std::move(*opening);
  return error;
}

/// Turned about the length by an angle that runs from -1/2 to 1/2 degree.
FaceShift WholeError::twisted(const FacePoint& point) const {
  const double degree = std::numbers::pi / 180;
  const Vector3 arm = point.point - middle_;
  const double angle = degree * arm.x() / length_mm_;
  const double by_x = degree / length_mm_;
  const Vector3 axis = Vector3::UnitX();
  const auto changed = [&](const Vector3& along) -> Vector3 {
    return by_x * along.x() * axis.cross(arm) + angle * axis.cross(along);
  };
  return {angle * axis.cross(arm), changed(point.by_u), changed(point.by_depth)};
}

FaceShift WholeError::hull_shift(const PerimeterSide& side,
                                 const LapPoint& point) const {
  const FacePoint& hull = point.hull;
  if (kind_ == ProcessErrorKind::HullShrinkage)
    return {middle_ - hull.point, -hull.by_u, -hull.by_depth};
  if (kind_ == ProcessErrorKind::HullTwist) return twisted(hull);
  if (kind_ != ProcessErrorKind::HullOpening) return {};
  const HullShift opened = opening_.at(side, point.place);
  return {opened.y_mm * Vector3::UnitY(), opened.by_u * Vector3::UnitY(),
          Vector3::Zero()};
}

double WholeError::gap_change(const PerimeterSide& side, const BoatPoint& point) const {
  Vector3 lip = Vector3::Zero();
  if (kind_ == ProcessErrorKind::LidShrinkage) lip = middle_ - point.lip.point;
  return sheerlap::gap_change(point, hull_shift(side, point.lap), lip);
}

}  // namespace sheerlap

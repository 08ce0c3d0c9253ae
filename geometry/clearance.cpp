#include "geometry/clearance.h"

#include <Eigen/LU>
#include <cmath>
#include <limits>

namespace sheerlap {

std::optional<FaceHit> face_hit(const RuledFace& face,
                                const Point3& origin,
                                const Vector3& direction,
                                Place near,
                                double near_depth_mm) {
  FaceHit hit{0, near, near_depth_mm};
  hit.distance_mm = (face.at(near, near_depth_mm).point - origin).dot(direction);
  for (int step = 0; step < 40; ++step) {
    const FacePoint on = face.at(hit.place, hit.depth_mm);
    Eigen::Matrix3d slopes;
    slopes << direction, -on.by_u, -on.by_depth;
    const double volume = slopes.determinant();
    if (!(std::abs(volume) > 1e-9 * on.by_u.norm())) return std::nullopt;
    const Vector3 miss = on.point - origin - hit.distance_mm * direction;
    const Vector3 move = slopes.inverse() * miss;
    if (!(move.norm() < 1e6)) return std::nullopt;
    hit.distance_mm += move.x();
    hit.place = face.curve().moved(hit.place, move.y());
    hit.depth_mm += move.z();
    // the step after this one would be of the square of this, over a radius in mm
    if (move.norm() <= 1e-6) return hit;
  }
  return std::nullopt;
}

std::optional<double> gap_mm(const RuledFace& inner,
                             const RuledFace& outer,
                             Place place,
                             double depth_mm) {
  const FacePoint from = inner.at(place, depth_mm);
  const auto hit = face_hit(outer, from.point, from.normal, place, depth_mm);
  if (!hit) return std::nullopt;
  return hit->distance_mm;
}

std::optional<Place> nearest_place(const RuledFace& face,
                                   double depth_mm,
                                   const Point3& point,
                                   Place near) {
  Place place = near;
  double last_along = 0;
  double last_move = 0;
  for (int step = 0; step < 60; ++step) {
    const FacePoint on = face.at(place, depth_mm);
    const double along = (point - on.point).dot(on.by_u) / on.by_u.squaredNorm();
    // one step more or less than `along`, as the line bends: by the secant
    const double secant = last_move / (last_along - along);
    const double move = secant > 0.3 && secant < 10 ? secant * along : along;
    if (!(std::abs(move) < 1e6)) return std::nullopt;
    place = face.curve().moved(place, move);
    const double rounding =
        8 * std::numeric_limits<double>::epsilon() * on.point.lpNorm<Eigen::Infinity>();
    if (std::abs(move) <= 1e-11 + rounding / on.by_u.norm()) return place;
    last_along = along;
    last_move = move;
  }
  return std::nullopt;
}

}  // namespace sheerlap

#pragma once

#include <optional>

#include "geometry/ruled_face.h"

namespace sheerlap {

/// Where a straight line meets a face.
struct FaceHit {
  double distance_mm = 0;  ///< along the line's direction; negative is behind
  Place place;
  double depth_mm = 0;
};

/// Where the line from `origin` along the unit vector `direction` meets a face, near
/// the place and depth given; the face is carried on past its edges.
///
/// @returns   nothing if the iteration finds no such point, as where the face folds
/// @accuracy  1e-12 of the face's size: Newton's method to rounding
std::optional<FaceHit> face_hit(const RuledFace& face, const Point3& origin,
                                const Vector3& direction, Place near,
                                double near_depth_mm);

/// The gap from `inner` to `outer` along the inner face's outward normal (mm);
/// negative where they interfere. Both hang from the same curve.
std::optional<double> gap_mm(const RuledFace& inner, const RuledFace& outer,
                             Place place, double depth_mm);

/// The place on a face's line at `depth_mm` that is nearest to `point`, sought from
/// `near` (a local minimum).
/// @returns   nothing if the iteration does not settle
std::optional<Place> nearest_place(const RuledFace& face, double depth_mm,
                                   const Point3& point, Place near);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/boat_points.h"
#include "joint/perimeter.h"
#include "joint/tolerance_inputs.h"

namespace sheerlap {

/// Whether an error varies along the joint; otherwise it is one of the part as a whole.
bool varies_along(ProcessErrorKind kind);

/// A face point moved (mm), and how that changes along the face.
struct FaceShift {
  Vector3 moved = Vector3::Zero();
  Vector3 by_u = Vector3::Zero();
  Vector3 by_depth = Vector3::Zero();
};

/// What an error of the part as a whole does to the gaps, for a unit of it: a share, a
/// degree, a mm.
///
/// Shrinkage is towards the middle of the boat, in plan and in height. The hull is
/// twisted about the middle of its length, at the middle of its height. It opens as a
/// strip in bending, hinged at its ends and corners and pushed at the middle of the
/// boat's length.
class WholeError {
 public:
  /// @param kind       one that does not vary along the joint
  /// @param perimeter  referred to
  /// @param where      address of the error, for errors
  /// @errors  at `where`: a hull whose sides cannot be opened so
  static Result<WholeError> of(ProcessErrorKind kind,
                               const Perimeter& perimeter,
                               const std::string& where);

  /// How much the gap at a point grows.
  /// @accuracy  first order: the error's square is left out
  double gap_change(const PerimeterSide& side, const BoatPoint& point) const;

 private:
  WholeError(ProcessErrorKind kind, const Perimeter& perimeter);
  FaceShift hull_shift(const PerimeterSide& side, const LapPoint& point) const;
  FaceShift twisted(const FacePoint& point) const;

  ProcessErrorKind kind_;
  Point3 middle_;
  double length_mm_ = 0;
  HullMovement opening_;
};

/// How much the gap at a point grows as its two face points move.
double gap_change(const BoatPoint& point, const FaceShift& hull, const Vector3& lip);

}  // namespace sheerlap

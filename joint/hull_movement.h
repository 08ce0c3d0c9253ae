#pragma once

#include <string>
#include <vector>

#include "geometry/bending_strip.h"
#include "geometry/result.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// Both sides of the hull moved by the same amount at one x.
struct HullPush {
  Length x;
  Length outward;     ///< of each side, athwartships; negative is inward
  std::string where;  ///< its address in the input, for errors
};

/// How far a place of the hull is moved athwartships, and how that changes.
struct HullShift {
  double y_mm = 0;  ///< to starboard
  double by_u = 0;  ///< for each unit of the sheer's parameter
};

/// The hull pushed out of its shape at some stations.
///
/// Each side is a strip in bending along the sheer, moved athwartships, hinged at the
/// bow, at every corner and where it meets the other side aft; where the joint merely
/// ends it is free. A push at a corner moves its hinge. The transom is carried along by
/// its two corners.
class HullMovement {
 public:
  HullMovement() = default;
  /// @errors  an x that a side does not have or has twice; two pushes less than 1 mm
  ///          apart along a side
  static Result<HullMovement> through(const Perimeter& perimeter,
                                      const std::vector<HullPush>& pushes);

  /// @param place  in one of the side's spans
  HullShift at(const PerimeterSide& side, Place place) const;
  /// The same, where the place's girth along the sheer is known.
  HullShift at(const PerimeterSide& side, Place place, Length girth) const;

 private:
  StripPoint to_starboard(SideName side, double girth_mm) const;
  HullShift on_transom(const PerimeterSide& side, Place place) const;

  std::vector<BendingStrip> starboard_, port_;  ///< by girth
  double starboard_mm_ = 0, port_mm_ = 0;       ///< the sides' lengths along the sheer
};

}  // namespace sheerlap

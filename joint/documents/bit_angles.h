#pragma once

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/joint.h"

namespace sheerlap {

/// How a bush block is to be set, the boat standing level.
struct BitAngles {
  /// From level; above 0 the bit rises as it goes in, below 0 it drops.
  Angle tilt;
  /// In plan. On starboard and port from square across the boat, above 0 if the bit
  /// leads aft as it goes in; on the transom from fore-and-aft, above 0 if it leads to
  /// starboard.
  Angle skew;
};

/// @param axis  unit, the way the bit goes, inboard
BitAngles bit_angles(SideName side, const Vector3& axis);

}  // namespace sheerlap

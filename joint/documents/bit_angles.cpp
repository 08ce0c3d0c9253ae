#include "joint/documents/bit_angles.h"

#include <cmath>

namespace sheerlap {

BitAngles bit_angles(SideName side, const Vector3& axis) {
  const double level = std::hypot(axis.x(), axis.y());
  const Angle tilt = Angle::radians(std::atan2(axis.z(), level));
  if (side == SideName::Transom)
    return {tilt, Angle::radians(std::atan2(axis.y(), -axis.x()))};
  const double inboard = side == SideName::Starboard ? -axis.y() : axis.y();
  return {tilt, Angle::radians(std::atan2(axis.x(), inboard))};
}

}  // namespace sheerlap

#pragma once

#include "geometry/points.h"
#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// How far a joint reaches on the boat (mm).
struct Extent {
  Point3 least, most;              ///< of the sheer and the lip's low edge
  Point3 sheer_least, sheer_most;  ///< of the sheer
  double broadest_x = 0;           ///< where the sheer is furthest to starboard

  double length_mm() const { return most.x() - least.x(); }
  double beam_mm() const { return most.y() - least.y(); }
  double height_mm() const { return most.z() - least.z(); }
};

/// @accuracy  a hundredth of a mm
Extent extent_of(const Perimeter& perimeter);

/// The joint seen from port, bow to the left: sheer, drill line and holes of port, and
/// the lip's low edge.
///
/// @param view  of x across and z up
void draw_profile(DrawnSheet& sheet, const View& view);

}  // namespace sheerlap

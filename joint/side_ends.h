#pragma once

#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// Where a side starts or ends on its drill line.
struct SideDatum {
  SideName side = SideName::Starboard;
  std::string what;  ///< "bow datum", "port transom corner" ...
  Point3 point;      ///< mm
};

/// The start and the end of every side.
std::vector<SideDatum> side_datums(const Perimeter& perimeter);

/// The point of a side's drill line at a girth, mm.
Point3 on_drill_line(const PerimeterSide& side, Length girth);

/// "bow datum", or the transom's "starboard transom corner".
std::string start_word(const PerimeterSide& side);

/// Where a side ends; without a joint along the transom it may still stop at the
/// transom's corner.
std::string end_word(const PerimeterSide& side);

}  // namespace sheerlap

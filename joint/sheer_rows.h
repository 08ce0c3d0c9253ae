#pragma once

#include <vector>

#include "geometry/points.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The points of the whole sheer in the order of its curve.
struct SheerPoints {
  std::vector<Point3> points;
  std::vector<SheerKnot> knots;  ///< one a point; `corner` holds the row's flag
  bool closed = true;
  std::size_t bow = 0;  ///< the point at the bow datum
};

/// A half sheer mirrored, a whole one turned to run clockwise seen from above.
///
/// @errors  "sheer.file" or "sheer.row[N]": no row on the centreline where one belongs,
///          a half to port, a first row that is not forward, neighbours that coincide
///          in plan, a polyline that crosses itself
Result<SheerPoints> sheer_points(const Sheer& sheer);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/side_line.h"

namespace sheerlap {

/// A polyline with the points left out that no line drawn through the rest needs.
///
/// @param within  >= 0; how far a point left out may lie from the line
/// @returns  the first and the last point, and those between that are needed
/// @source  derived: the furthest point is kept, and both halves looked at alike
std::vector<Point2> simplified(const std::vector<Point2>& points, double within);

/// A stretch of a side's line in plan, moved outboard, as a polyline.
struct PlanStretch {
  Length from;  ///< girth on the line
  Length to;
  double outboard_mm = 0;  ///< square to the line's face in plan; below 0 inboard
  double within_mm = 0;    ///< > 0; how far the polyline may lie from the line
};
std::vector<Point2> plan_line(const SideLine& line, const PlanStretch& stretch);

/// Girths along a stretch, so close that the chords between its points keep to the line
/// in space, and with both girths where the line turns a corner.
std::vector<Length> girths_along(const SideLine& line, const PlanStretch& stretch);

/// A point of a side's line in plan and the way outboard from it.
struct PlanPoint {
  Point2 point;
  Vector2 outboard;  ///< unit
};
PlanPoint plan_point(const SideLine& line, Length girth);

/// A point of the plan as drawn, seen from above with the bow to the left: x aft to the
/// right, y to starboard up.
Point2 drawn_point(const Point2& point);

/// Points of a drawing as the data of an SVG path, to the decimals given.
std::string path_data(const std::vector<Point2>& points, int count);

}  // namespace sheerlap

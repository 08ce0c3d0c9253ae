#pragma once

#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// Length and area of a closed line in plan.
struct PlanRing {
  double length_mm = 0;
  double area_mm2 = 0;
};

enum class OffsetJoin { Round, Mitre };

/// The line that stands `offset_mm` outside a polygon in plan, by GEOS; rounded by 64
/// chords to the quarter circle, or mitred without a limit.
PlanRing offset_ring(const std::vector<Point2>& polygon,
                     double offset_mm,
                     OffsetJoin join);

/// The distance from a point to the outline of a polygon in plan, by GEOS.
double outline_distance_mm(const std::vector<Point2>& polygon, const Point2& point);

}  // namespace sheerlap

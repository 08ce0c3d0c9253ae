#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// The first two edges of a polyline that cross or touch each other in plan, other
/// than neighbours at their common point; edge i runs from point i to point i + 1.
///
/// @param points  neighbours distinct in plan
/// @param closed  the last point joins the first
/// @source  exact predicates and box intersection of CGAL
std::optional<std::pair<std::size_t, std::size_t>> crossing_edges(
    const std::vector<Point2>& points, bool closed);

}  // namespace sheerlap

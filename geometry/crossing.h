#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// The first edge of a polyline that crosses or touches an earlier one in plan, other
/// than neighbours at their common point, and the first it does; edge i runs from point
/// i to point i + 1.
///
/// @param points  neighbours distinct in plan
/// @param closed  the last point joins the first
/// @returns  the earlier edge and the later one
/// @source  exact predicates and box intersection of CGAL
std::optional<std::pair<std::size_t, std::size_t>> crossing_edges(
    const std::vector<Point2>& points, bool closed);

}  // namespace sheerlap

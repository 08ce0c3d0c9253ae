#pragma once

#include <optional>
#include <vector>

#include "geometry/spacing_follow.h"

namespace sheerlap {

/// Where a path stands.
struct SpacingStop {
  std::size_t cell = 0;
  double at_mm = 0;
};

/// A row of points; its first stop is the start and its last the end of the ground.
struct SpacingPath {
  std::vector<SpacingStop> stops;
  double excess_mm = 0;  ///< over the greatest limits, in all
};

/// The best path: the least excess, if there may be any; then the fewest points; then
/// the least sum of squared spaces.
///
/// A space at a mirrored end has half its weight in the excess as in the sum.
///
/// @returns  nothing if there is no path
/// @source   derived: dynamic programme over the number of points, whose costs are
///           convex piecewise quadratics on parts of the cells. What can follow
///           depends on the place alone: of the best paths none reaches a place with
///           more excess than it can be reached with, nor with more points than that
///           excess takes.
std::optional<SpacingPath> best_path(const SpacingGround& ground,
                                     const SpacingAllowance& allowance,
                                     GreatestLimits limits);

}  // namespace sheerlap

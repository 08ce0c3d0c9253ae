#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/spacing.h"

namespace sheerlap {

/// What a number of points is to do.
enum class MilpGoal {
  LeastExcess,      ///< exceed the greatest limits by as little as possible in all
  SmallestLargest,  ///< keep every limit with the smallest largest space
};

struct MilpAnswer {
  double value_mm = 0;            ///< the excess or the largest space
  std::vector<double> points_mm;  ///< ascending
};

/// The same problem as `space_out` solves, for one stretch and a number of points, as a
/// mixed integer linear programme: an independent reference. It has a yes or no for
/// each point and forbidden interval (before or after), for each point and edge of a
/// zone, and for each point and fixed place, and no notion of cells.
///
/// @returns   nothing if the goal cannot be met
/// @accuracy  1e-6 of the greatest space
std::optional<MilpAnswer> milp_spacing(const SpacingProblem& problem,
                                       std::size_t points,
                                       MilpGoal goal);

}  // namespace sheerlap

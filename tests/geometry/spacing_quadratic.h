#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/spacing.h"

namespace sheerlap {

/// What the points have to keep besides the limits.
struct SquaresRules {
  double largest_mm = 0;  ///< no space is larger
  double excess_mm = 0;   ///< by so much in all the greatest limits may be exceeded
};

struct SquaresAnswer {
  double squares_mm2 = 0;
  std::vector<double> points_mm;  ///< ascending
};

/// The least sum of squared spaces (at a mirrored end half of it) of a number of
/// points: an independent reference. Goes through every way to spread the points over
/// the allowed ground and solves each as a quadratic programme in exact arithmetic.
/// What an end distance exceeds its limit by costs more than any space can gain.
///
/// @returns   nothing if the points cannot keep the rules
/// @accuracy  the limits are loosened by 1e-9 of themselves
std::optional<SquaresAnswer> least_squares(const SpacingProblem& problem,
                                           std::size_t points,
                                           const SquaresRules& rules);

}  // namespace sheerlap

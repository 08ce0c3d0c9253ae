#pragma once

#include <cstddef>
#include <optional>

#include "geometry/spacing.h"

namespace sheerlap {

/// The least sum of squared spaces (at a mirrored end half of it) of a number of points
/// that keep every limit with no space above `largest_mm`: an independent reference.
/// Goes through every way to spread the points over the allowed ground and solves each
/// as a quadratic programme in exact arithmetic.
///
/// @returns   nothing if the points cannot keep every limit
/// @accuracy  the limits are loosened by 1e-9 of themselves
std::optional<double> least_squares_mm2(const SpacingProblem& problem,
                                        std::size_t points,
                                        double largest_mm);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/spacing.h"

namespace sheerlap {

/// A space or an end distance, and what the definition of `space_out` asks of it.
struct JudgedSpace {
  double from_mm = 0;
  double to_mm = 0;
  double space_mm = 0;  ///< the distance; twice that at a mirrored end
  SpaceLimits limits;   ///< of `space_mm`
  double weight = 0;    ///< in the sums: 1, 1/2 at a mirrored end, 0 at another end

  double excess_mm() const;
};

/// The limits of a space, by what zones it overlaps and what it covers outside them.
SpaceLimits limits_between(const SpacingProblem& problem, double from_mm, double to_mm);

/// The end distances and spaces in order. A mirrored end with a point on it has none.
std::vector<JudgedSpace> judged(const SpacingProblem& problem,
                                const std::vector<double>& points_mm);

/// What the points are as a whole. What exceeds a greatest limit by no more than
/// `tolerance_mm` keeps it.
struct JudgedSpacing {
  double excess_mm = 0;    ///< half of it counts at a mirrored end
  double largest_mm = 0;   ///< of the spaces that keep their limits
  double squares_mm2 = 0;  ///< of the spaces that keep their limits
  std::size_t below_least = 0;
  bool allowed =
      true;  ///< all in order, none on forbidden ground, no fixed one missing
};
JudgedSpacing judged_as_a_whole(const SpacingProblem& problem,
                                const std::vector<double>& points_mm,
                                double tolerance_mm);

}  // namespace sheerlap

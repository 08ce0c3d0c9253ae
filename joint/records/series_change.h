#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerlap {

/// A straight line through a series.
struct Drift {
  double slope = 0;        ///< from one value to the next
  double slope_error = 0;  ///< its standard error
  double chance = 1;       ///< of a slope as steep in a series that does not drift
  double scatter = 0;      ///< standard deviation about the line
};

/// A series in two parts, each about its own mean.
struct Step {
  std::size_t at = 0;  ///< the first value of the second part
  double before = 0;   ///< mean of the parts
  double after = 0;
  double chance = 1;   ///< no less than that of such a step in a series without one
  double scatter = 0;  ///< standard deviation about the two means
};

/// The least-squares line through a series; none of fewer than three values.
///
/// Taken is that the values scatter about it independently and normally.
///
/// @param least_scatter  where the scatter is less, the slope's error and chance are of
///                       this one
/// @source  slope S_xy / S_xx, its error s / sqrt(S_xx), Student's t with n - 2 degrees
///          of freedom: any textbook of statistics
std::optional<Drift> drift_of(const std::vector<double>& values,
                              double least_scatter = 0);

/// The best split of a series in two parts of at least `least_part` values: the one
/// with the least sum of squares about the two means; none where it is too short.
///
/// The chance is Student's for the two means, times the number of splits that were
/// tried (Bonferroni's bound), at most 1.
///
/// @param least_scatter  where the scatter is less, the chance is by this one
std::optional<Step> step_of(const std::vector<double>& values,
                            double least_scatter = 0);
inline constexpr std::size_t least_part = 3;

/// Two-sided chance of Student's t.
/// @param freedom  > 0
double student_chance(double t, double freedom);

}  // namespace sheerlap

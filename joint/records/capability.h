#pragma once

#include <optional>
#include <vector>

namespace sheerlap {

/// How a series lies in the window it is to keep to.
struct Capability {
  double deviation = 0;  ///< standard deviation of all the values, drift and all
  double cp = 0;         ///< the window over six of these
  double cp_low = 0;     ///< 95 % confidence interval
  double cp_high = 0;
  double cpk = 0;  ///< from the mean to the nearer limit, over three of these
  double cpk_low = 0;
  double cpk_high = 0;
};

/// The values a series is to lie between.
struct GapWindow {
  double low = 0;
  double high = 0;
};

/// The capability of a series; none of fewer than two values or without scatter.
///
/// Taken is that the values are independent and normal.
/// @source  interval of Cp: chi-squared with n - 1 degrees of freedom; of Cpk:
///          A. F. Bissell, "How reliable is your capability index?", Applied Statistics
///          39 (1990) 331-340, Cpk -+ z sqrt(1 / (9 n) + Cpk^2 / (2 (n - 1))), from
///          memory, confirm; by the deviation of all values both are also called Pp
///          and Ppk
std::optional<Capability> capability_of(const std::vector<double>& values,
                                        const GapWindow& window);

}  // namespace sheerlap

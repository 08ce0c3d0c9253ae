#include "joint/run_total.h"

#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

/// Of the standard normal law, 0.9.
constexpr double normal_p90 = 1.2815515655446004;

}  // namespace

Estimate run_p90(const RunningFigures& boat, std::size_t boats) {
  assert(boats > 0);
  const double n = static_cast<double>(boats);
  const double deviation = std::sqrt(boat.variance());
  const double skewed =
      boat.skewness() / std::sqrt(n) * (normal_p90 * normal_p90 - 1) / 6;
  const double spread = std::sqrt(n) * deviation * (normal_p90 + skewed);
  const double of_mean = n * boat.mean_error();
  const double of_deviation =
      deviation > 0 ? boat.variance_error() / (2 * deviation) : 0;
  const double error = std::hypot(of_mean, std::sqrt(n) * normal_p90 * of_deviation);
  return normal_estimate(n * boat.mean() + spread, error);
}

Estimate run_mean(const RunningFigures& boat, std::size_t boats) {
  const double n = static_cast<double>(boats);
  return normal_estimate(n * boat.mean(), n * boat.mean_error());
}

}  // namespace sheerlap

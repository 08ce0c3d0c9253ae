#include "joint/records/capability.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace sheerlap {
namespace {

constexpr double outside = 0.05;  ///< share of intervals that miss

}  // namespace

std::optional<Capability> capability_of(const std::vector<double>& values,
                                        const GapWindow& window) {
  if (values.size() < 2) return std::nullopt;
  const double count = static_cast<double>(values.size());
  double mean = 0;
  for (const double value : values) mean += value / count;
  double squares = 0;
  for (const double value : values) squares += (value - mean) * (value - mean);
  Capability result;
  result.deviation = std::sqrt(squares / (count - 1));
  if (!(result.deviation > 1e-12 * std::abs(mean))) return std::nullopt;
  result.cp = (window.high - window.low) / (6 * result.deviation);
  const boost::math::chi_squared_distribution<> chi(count - 1);
  const auto interval_end = [&](double share) {
    return result.cp * std::sqrt(boost::math::quantile(chi, share) / (count - 1));
  };
  result.cp_low = interval_end(outside / 2);
  result.cp_high = interval_end(1 - outside / 2);
  result.cpk = std::min(window.high - mean, mean - window.low) / (3 * result.deviation);
  const double z =
      boost::math::quantile(boost::math::normal_distribution<>(), 1 - outside / 2);
  const double half =
      z * std::sqrt(1 / (9 * count) + result.cpk * result.cpk / (2 * (count - 1)));
  result.cpk_low = result.cpk - half;
  result.cpk_high = result.cpk + half;
  return result;
}

}  // namespace sheerlap

#include "joint/records/correlation.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace sheerlap {

std::optional<Correlation> correlation_of(const std::vector<FigurePair>& pairs) {
  if (pairs.size() < 4) return std::nullopt;
  const double count = static_cast<double>(pairs.size());
  double mean_x = 0;
  double mean_y = 0;
  for (const FigurePair& pair : pairs) {
    mean_x += pair.x / count;
    mean_y += pair.y / count;
  }
  double s_xx = 0;
  double s_yy = 0;
  double s_xy = 0;
  for (const FigurePair& pair : pairs) {
    s_xx += (pair.x - mean_x) * (pair.x - mean_x);
    s_yy += (pair.y - mean_y) * (pair.y - mean_y);
    s_xy += (pair.x - mean_x) * (pair.y - mean_y);
  }
  const auto varies = [&](double squares, double mean) {
    return squares > 1e-24 * count * mean * mean && squares > 0;
  };
  if (!varies(s_xx, mean_x) || !varies(s_yy, mean_y)) return std::nullopt;
  Correlation result;
  result.count = pairs.size();
  result.r = std::clamp(s_xy / std::sqrt(s_xx * s_yy), -1.0, 1.0);
  result.slope = s_xy / s_xx;
  const double half =
      boost::math::quantile(boost::math::normal_distribution<>(), 0.975) /
      std::sqrt(count - 3);
  result.low = std::tanh(std::atanh(result.r) - half);
  result.high = std::tanh(std::atanh(result.r) + half);
  return result;
}

}  // namespace sheerlap

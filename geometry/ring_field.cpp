#include "geometry/ring_field.h"

#include <cassert>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace sheerlap {
namespace {

constexpr double left_out = 1e-6;  ///< of the variance, at most
constexpr double ends_apart = 6;  ///< correlation lengths from an open end to the other

double period(const FieldLine& line) {
  assert(line.length_mm > 0 && line.correlation_mm > 0);
  return line.length_mm + (line.closed ? 0 : ends_apart * line.correlation_mm);
}

/// Of the waves with 0, 1, ... periods, as many as are needed; they sum to 1.
std::vector<double> variances(const FieldLine& line) {
  const double step =
      2 * std::numbers::pi * line.correlation_mm / period(line);  // n l / P, in radians
  std::vector<double> waves{1};
  double sum = 1;
  for (double n = 1;; ++n) {
    // those from here on, each twice that of its cosine: their sum is less than the
    // integral of the falling curve from one before
    const double rest = std::sqrt(2 * std::numbers::pi) / step *
                        std::erfc((n - 1) * step / std::numbers::sqrt2);
    if (rest < left_out * sum) break;
    waves.push_back(2 * std::exp(-n * n * step * step / 2));
    sum += waves.back();
  }
  for (double& wave : waves) wave /= sum;
  return waves;
}

}  // namespace

Eigen::Index field_terms(const FieldLine& line) {
  return 2 * static_cast<Eigen::Index>(variances(line).size()) - 1;
}

Eigen::MatrixXd field_basis(const FieldLine& line,
                            const std::vector<double>& along_mm) {
  const std::vector<double> waves = variances(line);
  const auto points = static_cast<Eigen::Index>(along_mm.size());
  const auto count = static_cast<Eigen::Index>(waves.size());
  Eigen::MatrixXd basis(points, 2 * count - 1);
  for (Eigen::Index point = 0; point < points; ++point) {
    const double turn =
        2 * std::numbers::pi * along_mm[static_cast<std::size_t>(point)] / period(line);
    basis(point, 0) = std::sqrt(waves.front());
    for (Eigen::Index n = 1; n < count; ++n) {
      const double size = std::sqrt(waves[static_cast<std::size_t>(n)]);
      const double angle = static_cast<double>(n) * turn;
      basis(point, 2 * n - 1) = size * std::cos(angle);
      basis(point, 2 * n) = size * std::sin(angle);
    }
  }
  return basis;
}

}  // namespace sheerlap

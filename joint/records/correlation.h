#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerlap {

/// Two figures of one boat.
struct FigurePair {
  double x = 0;
  double y = 0;
};

/// How two figures go together.
struct Correlation {
  std::size_t count = 0;
  double r = 0;    ///< Pearson's coefficient
  double low = 0;  ///< 95 % confidence interval
  double high = 0;
  double slope = 0;  ///< of y against x, least squares
};

/// The correlation of pairs; none of fewer than four, or where one figure is always the
/// same.
/// @source  interval by Fisher's z = atanh(r), error 1 / sqrt(n - 3): any textbook of
///          statistics
std::optional<Correlation> correlation_of(const std::vector<FigurePair>& pairs);

}  // namespace sheerlap

#include "geometry/bending_strip.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <utility>

namespace sheerlap {
namespace {

/// The slope of the chord between two supports.
double chord_slope(const StripSupport& from, const StripSupport& to) {
  return (to.moved_mm - from.moved_mm) / (to.at_mm - from.at_mm);
}

/// The curvatures at the supports, by the theorem of three moments: the slopes of
/// neighbouring spans agree. Eliminated downwards, then solved upwards.
std::vector<double> three_moments(const std::vector<StripSupport>& supports) {
  const std::size_t n = supports.size();
  std::vector<double> curvature(n, 0.0), above(n, 0.0);
  for (std::size_t i = 1; i + 1 < n; ++i) {
    const double before = supports[i].at_mm - supports[i - 1].at_mm;
    const double after = supports[i + 1].at_mm - supports[i].at_mm;
    const double right = 6 * (chord_slope(supports[i], supports[i + 1]) -
                              chord_slope(supports[i - 1], supports[i]));
    const double pivot = 2 * (before + after) - before * above[i - 1];
    above[i] = after / pivot;
    curvature[i] = (right - before * curvature[i - 1]) / pivot;
  }
  for (std::size_t i = n - 1; i-- > 1;) curvature[i] -= above[i] * curvature[i + 1];
  return curvature;
}

}  // namespace

BendingStrip::BendingStrip(std::vector<StripSupport> supports)
    : supports_(std::move(supports)) {
  assert(supports_.size() >= 2);
  for (std::size_t i = 0; i + 1 < supports_.size(); ++i)
    assert(supports_[i].at_mm < supports_[i + 1].at_mm);
  curvatures_ = three_moments(supports_);
}

StripPoint BendingStrip::at(double along_mm) const {
  const auto after =
      std::upper_bound(supports_.begin() + 1, supports_.end() - 1, along_mm,
                       [](double at, const StripSupport& b) { return at < b.at_mm; });
  const auto to = static_cast<std::size_t>(after - supports_.begin());
  const StripSupport& a = supports_[to - 1];
  const StripSupport& b = supports_[to];
  const double span = b.at_mm - a.at_mm;
  const double along = std::clamp(along_mm, a.at_mm, b.at_mm);
  const double p = (b.at_mm - along) / span;
  const double q = (along - a.at_mm) / span;
  const double bend_a = curvatures_[to - 1] * span / 6;
  const double bend_b = curvatures_[to] * span / 6;
  StripPoint point;
  point.moved_mm = p * a.moved_mm + q * b.moved_mm +
                   span * ((p * p * p - p) * bend_a + (q * q * q - q) * bend_b);
  point.slope = chord_slope(a, b) - (3 * p * p - 1) * bend_a + (3 * q * q - 1) * bend_b;
  point.curvature = p * curvatures_[to - 1] + q * curvatures_[to];
  point.moved_mm += (along_mm - along) * point.slope;
  if (along_mm != along) point.curvature = 0;
  return point;
}

}  // namespace sheerlap

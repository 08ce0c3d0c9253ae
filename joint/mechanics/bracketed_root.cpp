#include "joint/mechanics/bracketed_root.h"

#include <boost/math/tools/roots.hpp>
#include <cassert>
#include <cstdint>

namespace sheerlap {

double bracketed_root(const std::function<double(double)>& rising,
                      double low,
                      double high) {
  assert(low <= high);
  const double at_low = rising(low), at_high = rising(high);
  if (!(at_low < 0)) return low;
  if (!(at_high > 0)) return high;
  std::uintmax_t steps = 200;  // halving alone is through in 60 once off zero
  const auto [below, above] = boost::math::tools::toms748_solve(
      rising, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(48),
      steps);
  return below + (above - below) / 2;
}

}  // namespace sheerlap

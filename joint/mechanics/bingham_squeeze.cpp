#include "joint/mechanics/bingham_squeeze.h"

#include <cmath>

#include "geometry/quadrature.h"

namespace sheerlap {
namespace yield_flow {

double place(double excess) {
  const double slope = 1 + excess;
  return excess * excess * (2 * excess + 3) / (2 * slope * slope);
}

double excess(double at) {
  // Newton's method from above: the function is convex and grows
  double found = 0.5 + at;
  for (int i = 0; i < 200 && found > 0; ++i) {
    const double grade = 1 - std::pow(1 + found, -3);
    const double next = found - (place(found) - at) / grade;
    if (!(next < found)) break;
    found = next > 0 ? next : 0;
  }
  return found;
}

double force(double edge) {
  const double top = excess(edge);
  const auto square = [&](double at) { return std::pow(place(at) / edge, 2); };
  return 1 + top - integral(square, 0, top, 1);
}

}  // namespace yield_flow
}  // namespace sheerlap

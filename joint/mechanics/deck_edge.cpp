#include "joint/mechanics/deck_edge.h"

#include <algorithm>
#include <boost/math/constants/constants.hpp>
#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

using std::numbers::pi;

/// Beyond this many b a plate's middle and corner know nothing of its far end: what is
/// left out is of the order of exp(-pi a/(2 b)), 1e-13.
constexpr double long_plate = 20;

/// Beyond this angle tanh is 1 to the last digit.
constexpr double last_angle = 20;

/// m pi b/(2 a) of the m-th wave along the edge.
double angle_of(int m, double aspect) { return m * pi / (2 * aspect); }

/// 1 - tanh(angle), free of cancellation.
double short_of_one(double angle) { return 2 / (1 + std::exp(2 * angle)); }

double angle_sech_squared(double angle) { return angle * std::pow(sech(angle), 2); }

}  // namespace

double levy_edge_factor(double aspect, double nu) {
  const double capped = std::min(aspect, long_plate);
  double sum = (3 - nu) * boost::math::constants::catalan<double>();
  double sign = 1;
  for (int m = 1; angle_of(m, capped) <= last_angle; m += 2, sign = -sign) {
    const double angle = angle_of(m, capped);
    sum -= sign / std::pow(m, 2) *
           ((3 - nu) * short_of_one(angle) + (1 - nu) * angle_sech_squared(angle));
  }
  return 2 * capped / std::pow(pi, 2) * sum;
}

double levy_corner_factor(double aspect, double nu) {
  const double capped = std::min(aspect, long_plate);
  double sum = 7. / 8 * boost::math::constants::zeta_three<double>();
  for (int m = 1; angle_of(m, capped) <= last_angle; m += 2) {
    const double angle = angle_of(m, capped);
    sum -= (short_of_one(angle) + angle_sech_squared(angle)) / std::pow(m, 3);
  }
  return 4 * (1 - nu) * std::pow(capped, 2) / std::pow(pi, 3) * sum;
}

}  // namespace sheerlap

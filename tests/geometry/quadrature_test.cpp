#include "geometry/quadrature.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(quadrature)

BOOST_AUTO_TEST_CASE(an_integral_runs_either_way) {
  const auto square = [](double x) { return x * x; };
  for (const double bend : {0., 0.01, 1.}) {
    BOOST_TEST(integral(square, 0, 3, bend) == 9, tolerance(1e-14));
    BOOST_TEST(integral(square, 3, 0, bend) == -9, tolerance(1e-14));
    BOOST_TEST(integral(square, 3, 3, bend) == 0);
  }
}

BOOST_AUTO_TEST_CASE(a_sharp_but_smooth_peak_is_found) {
  // derived: the integral of 1/(1 + (x/w)^2) over [-1, 1] is 2 w atan(1/w)
  for (const double width : {0.3, 0.03, 0.003}) {
    const auto peak = [&](double x) { return 1 / (1 + (x / width) * (x / width)); };
    BOOST_TEST(integral(peak, -1, 1, 3) == 2 * width * std::atan(1 / width),
               tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(an_integral_of_nothing_but_rounding_costs_no_more_than_another) {
  // property: an integrand that cancels, and one that is 0 but for rounding, must not
  // send the rule after digits that are not there
  int calls = 0;
  const auto odd = [&](double x) { return ++calls, std::sin(x); };
  BOOST_TEST(std::abs(integral(odd, -1, 1, 1)) < 1e-15);
  BOOST_TEST(calls < 1000);
  calls = 0;
  const auto noise = [&](double x) { return ++calls, (x + 1e4) - 1e4 - x; };
  BOOST_TEST(std::abs(integral(noise, 0, 1, 1)) < 1e-11);
  BOOST_TEST(calls < 1000);
}

BOOST_AUTO_TEST_CASE(the_cost_does_not_hang_on_the_unit) {
  // property: the same function of a length in mm, in m, and near a large offset
  const auto calls = [](double unit, double offset) {
    int count = 0;
    const auto speed = [&](double x) {
      const double noise = (std::sin(x / unit) + offset) - offset;
      return ++count, std::sqrt(1 + noise * noise);
    };
    integral(speed, 0, unit, 1);
    return count;
  };
  BOOST_TEST(calls(1e-3, 0) == calls(1, 0));
  BOOST_TEST(calls(1e3, 0) == calls(1, 0));
  BOOST_TEST(calls(1, 1e4) == calls(1, 0));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

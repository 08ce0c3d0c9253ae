#include "joint/mechanics/bingham_squeeze.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <string>

#include "joint/mechanics/yield_squeeze.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(bingham_squeeze_test)

Squeeze<double> strip(double speed) { return {300, 50, 3, speed}; }

BOOST_AUTO_TEST_CASE(the_force_at_each_speed_is_the_worked_one) {
  const struct {
    double speed, force;  // mm/s, N/mm; derived: integrated outside this program
  } rows[] = {{1e-6, 0.208764}, {0.1, 0.424530}, {1, 1.69889}, {10, 14.2013}};
  PlainWorking work;
  for (const auto& row : rows)
    BOOST_TEST(bingham_force(work, strip(row.speed), 500) == row.force,
               tolerance(4e-6));
  // derived: 1.69889 x 150
  BOOST_TEST(clamp_force(work, bingham_force(work, strip(1), 500), 150) == 254.834,
             tolerance(2e-6));
}

/// The slope of the pressure at `x` from the middle, N/mm3, by halving.
double slope_at(double x, const Squeeze<double>& paste, double ty) {
  const double least = 2 * ty / 1e6 / paste.eta;
  double low = least, high = least;
  const auto flow = [&](double slope) {
    const double phi = least / slope;
    return slope * std::pow(paste.eta, 3) / (12 * paste.mu / 1e6) *
           (1 - 1.5 * phi + 0.5 * std::pow(phi, 3));
  };
  while (flow(high) < paste.V * x) high *= 2;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (flow(middle) < paste.V * x ? low : high) = middle;
  }
  return (low + high) / 2;
}

BOOST_AUTO_TEST_CASE(the_force_is_the_integral_of_the_slope_across_the_strip) {
  // derived: midpoints in u with x = u^2, which the slope is smooth in; 2000 of them
  // leave an error of about 1e-7
  PlainWorking work;
  for (const double speed : {1e-3, 0.1, 1., 30.}) {
    double sum = 0;
    const int count = 2000;
    const double end = std::sqrt(25.), step = end / count;
    for (int i = 0; i < count; ++i) {
      const double u = (i + 0.5) * step, x = u * u;
      sum += 2 * x * slope_at(x, strip(speed), 500) * 2 * u * step;
    }
    BOOST_TEST(bingham_force(work, strip(speed), 500) == sum, tolerance(1e-6));
  }
}

BOOST_AUTO_TEST_CASE(the_force_keeps_to_its_bounds_and_meets_them_at_the_ends) {
  PlainWorking work;
  double share_before = 1;
  for (double speed = 1e-10; speed < 1e8; speed *= 10) {
    const double force = bingham_force(work, strip(speed), 500);
    BOOST_TEST(force >= lowest_squeeze_force(work, strip(speed), 500) * (1 - 1e-12));
    BOOST_TEST(force <= highest_squeeze_force(work, strip(speed), 500) * (1 + 1e-12));
    if (speed > 1e3) continue;  // beyond, the yield's part drowns in rounding
    const double share = (force - squeeze_force(work, strip(speed))) /
                         yield_force(work, strip(speed), 500);
    BOOST_TEST(share > share_before);
    share_before = share;
  }
  BOOST_TEST(share_before > 1.49);
}

BOOST_AUTO_TEST_CASE(a_paste_that_hardly_yields_flows_as_one_that_does_not) {
  // property
  PlainWorking work;
  BOOST_TEST(bingham_force(work, strip(1), 1e-6) == squeeze_force(work, strip(1)),
             tolerance(1e-8));
}

BOOST_AUTO_TEST_CASE(the_formula_on_paper_gives_the_integrated_force) {
  // derived: both sides of the equation that is written down, by hand at 1 mm/s:
  // g_0 = 1e-3/3, x_0 = 2.5, S = 11.4962, sum = 331.8
  WrittenWorking work;
  PlainWorking plain;
  const Term force = bingham_force(work, {300., 50., 3., 1.}, 500);
  BOOST_TEST(force.value() == bingham_force(plain, strip(1), 500));
  BOOST_TEST_REQUIRE(work.steps().size() == 4U);
  const double g_0 = work.steps()[0].value, x_0 = work.steps()[1].value;
  const double S = work.steps()[2].value;
  BOOST_TEST(x_0 == 2.5, tolerance(1e-12));
  BOOST_TEST(S - 1.5 + 0.5 / (S * S) == 10, tolerance(1e-12));
  const double sum = S * S * S / 3 - 1.5 * S * S + 2.25 * S + std::log(S) + 1.5 / S -
                     1 / (12 * S * S * S) - 2.5;
  BOOST_TEST(g_0 * (S * 625 - x_0 * x_0 * sum) == force.value(), tolerance(1e-10));
  BOOST_TEST(work.steps()[3].formula.find("ln(S)") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "geometry/bending_strip.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

double energy(const BendingStrip& strip, double from, double to) {
  // curvature is linear between supports: midpoints and ends by Simpson's rule over
  // short steps are exact for its square where no support lies within a step
  double sum = 0;
  constexpr int steps = 240;
  const double step = (to - from) / steps;
  for (int i = 0; i < steps; ++i) {
    const double a = strip.at(from + i * step).curvature;
    const double b = strip.at(from + (i + 0.5) * step).curvature;
    const double c = strip.at(from + (i + 1) * step).curvature;
    sum += step * (a * a + 4 * b * b + c * c) / 6;
  }
  return sum;
}

BOOST_AUTO_TEST_SUITE(bending_strip)

BOOST_AUTO_TEST_CASE(a_strip_pushed_at_its_middle_is_a_simply_supported_beam) {
  // published: W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain,
  // beams, simple supports, concentrated load at mid-span: w = d (3 l^2 x - 4 x^3) /
  // l^3 up to the middle, end slope 3 d / l; from memory, confirm
  constexpr double length = 2400, deflection = 9;
  const BendingStrip strip({{0, 0}, {length / 2, deflection}, {length, 0}});
  for (const double x : {0., 150., 600., 1100., 1200.}) {
    const double expected = deflection * (3 * length * length * x - 4 * x * x * x) /
                            (length * length * length);
    BOOST_TEST(std::abs(strip.at(x).moved_mm - expected) < 1e-12);
    BOOST_TEST(std::abs(strip.at(length - x).moved_mm - expected) < 1e-12);
  }
  BOOST_TEST(strip.at(0).slope == 3 * deflection / length,
             boost::test_tools::tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(a_load_off_the_middle_bends_it_as_the_formula_says) {
  // published: the same, load at a from one end, b from the other, up to the load:
  // w = P b x (l^2 - b^2 - x^2) / (6 E I l), at the load P a^2 b^2 / (3 E I l), so
  // w = w_load x (l^2 - b^2 - x^2) / (2 a^2 b); from memory, confirm
  constexpr double a = 700, b = 1500, l = a + b, at_load = 4;
  const BendingStrip strip({{0, 0}, {a, at_load}, {l, 0}});
  for (const double x : {100., 350., 700.}) {
    const double expected = at_load * x * (l * l - b * b - x * x) / (2 * a * a * b);
    BOOST_TEST(strip.at(x).moved_mm == expected, boost::test_tools::tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(a_support_that_gives_way_bends_a_continuous_beam) {
  // derived: Clapeyron's theorem of three moments for three spans l of which the first
  // inner support is moved by d: 4 k_1 + k_2 = -12 d / l^2, k_1 + 4 k_2 = 6 d / l^2,
  // so the curvatures are k_1 = -3.6 d / l^2 and k_2 = 2.4 d / l^2
  constexpr double l = 900, d = 5;
  const BendingStrip strip({{0, 0}, {l, d}, {2 * l, 0}, {3 * l, 0}});
  BOOST_TEST(strip.curvatures()[1] == -3.6 * d / (l * l),
             boost::test_tools::tolerance(1e-13));
  BOOST_TEST(strip.curvatures()[2] == 2.4 * d / (l * l),
             boost::test_tools::tolerance(1e-13));
  BOOST_TEST(strip.curvatures()[0] == 0);
  BOOST_TEST(strip.curvatures()[3] == 0);
}

BOOST_AUTO_TEST_CASE(slope_and_curvature_run_on_through_a_support) {
  const BendingStrip strip({{-50, 2}, {300, -4}, {800, 7}, {2000, 1}});
  for (const double at : {300., 800.}) {
    const StripPoint before = strip.at(at - 1e-7);
    const StripPoint after = strip.at(at + 1e-7);
    BOOST_TEST(std::abs(before.moved_mm - after.moved_mm) < 1e-7);
    BOOST_TEST(std::abs(before.slope - after.slope) < 1e-9);
    BOOST_TEST(std::abs(before.curvature - after.curvature) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(slope_is_the_rate_at_which_it_moves) {
  const BendingStrip strip({{0, 0}, {420, 3}, {1000, -2}, {1600, 0}});
  for (const double at : {-60., 90., 500., 1300., 1700.}) {
    const double rate =
        (strip.at(at + 0.01).moved_mm - strip.at(at - 0.01).moved_mm) / 0.02;
    BOOST_TEST(std::abs(strip.at(at).slope - rate) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(two_supports_leave_it_straight) {
  const BendingStrip strip({{100, 1}, {300, 5}});
  BOOST_TEST(strip.at(200).moved_mm == 3, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(strip.at(0).moved_mm == -1, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(strip.at(500).moved_mm == 9, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(strip.at(200).curvature == 0);
}

BOOST_AUTO_TEST_CASE(it_is_straight_beyond_its_last_support) {
  const BendingStrip strip({{0, 0}, {500, 6}, {1200, 0}});
  const StripPoint end = strip.at(1200);
  BOOST_TEST(strip.at(1500).moved_mm == end.moved_mm + 300 * end.slope,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(strip.at(1500).curvature == 0);
}

BOOST_AUTO_TEST_CASE(no_other_shape_through_the_supports_takes_less_energy) {
  // property: one support more, off the strip's own line, makes another shape through
  // the same supports; it must take more energy, whichever way it is pushed
  const BendingStrip strip({{0, 0}, {400, 5}, {1000, -1}, {1600, 0}});
  const double least = energy(strip, 0, 1600);
  for (const double push : {-0.5, 0.01, 2.}) {
    const double there = strip.at(700).moved_mm;
    const BendingStrip other(
        {{0, 0}, {400, 5}, {700, there + push}, {1000, -1}, {1600, 0}});
    BOOST_TEST(energy(other, 0, 1600) > least);
  }
  const BendingStrip same(
      {{0, 0}, {400, 5}, {700, strip.at(700).moved_mm}, {1000, -1}, {1600, 0}});
  BOOST_TEST(energy(same, 0, 1600) == least, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

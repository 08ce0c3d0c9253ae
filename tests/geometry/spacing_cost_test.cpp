#include "geometry/spacing_cost.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

constexpr SpacingStep space{40, 150, 1, 1};

/// The least sum of the squares of two steps from 0, by trying every place between.
double least_of_two(const SpacingStep& step, double at) {
  double least = std::numeric_limits<double>::infinity();
  const double first_low = std::max(step.least_mm, at - step.greatest_mm);
  const double first_high = std::min(step.greatest_mm, at - step.least_mm);
  constexpr int parts = 1000;
  for (int part = 0; part <= parts; ++part) {
    const double first = first_low + (first_high - first_low) * part / parts;
    least = std::min(least, first * first + (at - first) * (at - first));
  }
  return least;
}

BOOST_AUTO_TEST_SUITE(spacing_cost)

BOOST_AUTO_TEST_CASE(one_space_costs_its_square) {
  const SpacingCost one = SpacingCost::at_start(10).after(space, 0);
  BOOST_TEST(one.from_mm() == 50);  // derived: 10 + 40, 10 + 150
  BOOST_TEST(one.to_mm() == 160);
  for (const double at : {50., 77., 160.}) {
    BOOST_TEST(one.value_at(at).squares_mm2 == (at - 10) * (at - 10),
               boost::test_tools::tolerance(1e-14));
    BOOST_TEST(one.before_mm(at) == 10);
  }
}

BOOST_AUTO_TEST_CASE(two_spaces_cost_what_the_best_place_between_makes_them) {
  const SpacingCost one = SpacingCost::at_start(0).after(space, 0);
  const SpacingCost two = one.after(space, 0);
  BOOST_TEST(two.from_mm() == 80);  // derived: 2 x 40, 2 x 150
  BOOST_TEST(two.to_mm() == 300);
  for (const double at : {80., 101., 222., 300.}) {
    // derived: trial of 1001 places, the middle among them
    BOOST_TEST(two.value_at(at).squares_mm2 == least_of_two(space, at),
               boost::test_tools::tolerance(1e-12));
    BOOST_TEST(two.before_mm(at) == at / 2, boost::test_tools::tolerance(1e-14));
  }
}

BOOST_AUTO_TEST_CASE(a_window_binds_the_place_before) {
  const SpacingCost one = SpacingCost::at_start(0).after(space, 0).within(100, 120);
  const SpacingCost two = one.after(space, 0);
  // derived: the middle, kept between 100 and 120 and within 40..150 of the place
  BOOST_TEST(two.before_mm(145) == 100);
  BOOST_TEST(two.before_mm(170) == 100);
  BOOST_TEST(two.before_mm(230) == 115);
  BOOST_TEST(two.before_mm(265) == 120);
  BOOST_TEST(two.value_at(265).squares_mm2 == 120 * 120 + 145 * 145);
}

BOOST_AUTO_TEST_CASE(excess_counts_before_squares) {
  const SpacingCost one = SpacingCost::at_start(0).after(space, 100);
  // derived: beyond 150 each mm is excess
  BOOST_TEST(one.to_mm() == 250);
  BOOST_TEST(one.value_at(150).excess_mm == 0);
  BOOST_TEST(one.value_at(180).excess_mm == 30);
  BOOST_TEST(one.value_at(180).squares_mm2 == 180 * 180,
             boost::test_tools::tolerance(1e-14));
  const SpacingCost two = one.after(space, 100);
  // derived: 330 in two is 30 too much wherever the middle is; 165 is most even
  BOOST_TEST(two.value_at(330).excess_mm == 30, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(two.before_mm(330) == 165, boost::test_tools::tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(a_least_limit_above_the_greatest_is_excess_from_the_start) {
  const SpacingCost one = SpacingCost::at_start(0).after({80, 60, 1, 1}, 100);
  BOOST_TEST(one.from_mm() == 80);
  BOOST_TEST(one.value_at(80).excess_mm == 20);  // derived: 80 - 60
  BOOST_TEST(one.value_at(90).excess_mm == 30);
}

BOOST_AUTO_TEST_CASE(a_part_of_a_cost_has_its_values) {
  const SpacingCost two =
      SpacingCost::at_start(0).after(space, 0).within(90, 120).after(space, 0);
  for (const double at : {140., 190., 240.}) {
    const SpacingCost part = two.within(at, at + 20);
    BOOST_TEST(part.from_mm() == at);  // property
    BOOST_TEST(part.to_mm() == at + 20);
    for (const double inside : {at, at + 7, at + 20}) {
      BOOST_TEST(part.value_at(inside).squares_mm2 == two.value_at(inside).squares_mm2,
                 boost::test_tools::tolerance(1e-13));
      BOOST_TEST(part.before_mm(inside) == two.before_mm(inside),
                 boost::test_tools::tolerance(1e-13));
    }
  }
  BOOST_TEST(
      two.within(200, 200).value_at(200).squares_mm2 == two.value_at(200).squares_mm2,
      boost::test_tools::tolerance(1e-13));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

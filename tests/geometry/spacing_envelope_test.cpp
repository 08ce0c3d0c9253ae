#include "geometry/spacing_envelope.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

/// The square of the distance from a place, from 40 to 150 away from it.
SpacingCost square_from(double start) {
  return SpacingCost::at_start(start).after({40, 150, 1, 1}, 0);
}

/// Two spaces from a start by a place that is given.
SpacingCost by_way_of(double start, double place) {
  return square_from(start).within(place, place).after({40, 150, 1, 1}, 0);
}

constexpr CostOrder by_squares{1e-7, CostTie::BySquares};

BOOST_AUTO_TEST_SUITE(spacing_envelope)

BOOST_AUTO_TEST_CASE(the_cost_from_the_nearer_place_is_better_everywhere) {
  const auto better = better_parts(square_from(20), square_from(0), by_squares);
  BOOST_TEST_REQUIRE(better.size() == 1u);
  BOOST_TEST(better[0].from_mm == 60);  // derived: shared ground 60..150
  BOOST_TEST(better[0].to_mm == 150);
  BOOST_TEST(better_parts(square_from(0), square_from(20), by_squares).empty());
}

BOOST_AUTO_TEST_CASE(each_of_two_ways_is_better_where_it_is_more_even) {
  // derived: 60^2 + (x - 60)^2 and 100^2 + (x - 100)^2 are equal at x = 160
  const SpacingCost near = by_way_of(0, 60);
  const SpacingCost far = by_way_of(0, 100);
  const auto better = better_parts(near, far, by_squares);
  BOOST_TEST_REQUIRE(better.size() == 1u);
  BOOST_TEST(better[0].from_mm == 140);
  BOOST_TEST(better[0].to_mm == 160, boost::test_tools::tolerance(1e-10));
  const auto other = better_parts(far, near, by_squares);
  BOOST_TEST_REQUIRE(other.size() == 1u);
  BOOST_TEST(other[0].from_mm == 160, boost::test_tools::tolerance(1e-10));
  BOOST_TEST(other[0].to_mm == 210);
}

BOOST_AUTO_TEST_CASE(less_excess_is_better_than_less_squares) {
  const SpacingCost kept = SpacingCost::at_start(0).after({40, 200, 3, 1}, 0);
  const SpacingCost exceeded = SpacingCost::at_start(0).after({40, 150, 1, 1}, 50);
  const auto better = better_parts(exceeded, kept, by_squares);
  BOOST_TEST_REQUIRE(better.size() == 1u);
  BOOST_TEST(better[0].from_mm == 40);  // derived: no excess up to 150
  BOOST_TEST(better[0].to_mm == 150, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_tie_is_lost_decided_by_squares_or_won) {
  const SpacingCost cost = square_from(0);
  const SpacingCost less = square_from(10);
  BOOST_TEST(better_parts(less, cost, {1e-7, CostTie::Lost}).empty());
  BOOST_TEST(better_parts(less, cost, by_squares).size() == 1u);
  BOOST_TEST(better_parts(cost, less, {1e-7, CostTie::Won}).size() == 1u);
  BOOST_TEST(better_parts(cost, cost, by_squares).empty());  // property
}

BOOST_AUTO_TEST_CASE(single_places_are_compared_too) {
  const SpacingCost one = square_from(0).within(100, 100);
  const SpacingCost other = square_from(20);
  BOOST_TEST(better_parts(one, other, by_squares).empty());  // derived: 100 > 80
  const auto better = better_parts(other, one, by_squares);
  BOOST_TEST_REQUIRE(better.size() == 1u);
  BOOST_TEST(better[0].from_mm == 100);
  BOOST_TEST(better[0].to_mm == 100);
  const SpacingCost elsewhere = square_from(500);
  BOOST_TEST(better_parts(one, elsewhere, by_squares).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

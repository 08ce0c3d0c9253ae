#include "geometry/spacing_reach.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

SpacingProblem corner_to_corner(double length, double least, double greatest) {
  SpacingProblem problem;
  problem.to_mm = length;
  problem.limits = {least, greatest};
  return problem;
}

BOOST_AUTO_TEST_SUITE(spacing_reach)

BOOST_AUTO_TEST_CASE(the_fewest_points_are_found_if_they_are_few_enough) {
  const SpacingGround ground(corner_to_corner(1000, 40, 150), {});
  BOOST_TEST(fewest_points(ground, {}, 100).value() == 8u);  // ceil(1000 / 150) + 1
  BOOST_TEST(fewest_points(ground, {}, 8).value() == 8u);
  BOOST_TEST(!fewest_points(ground, {}, 7).has_value());
}

BOOST_AUTO_TEST_CASE(a_stretch_between_multiples_of_its_limits_cannot_be_reached) {
  const SpacingGround ground(corner_to_corner(320, 120, 150), {});
  BOOST_TEST(!fewest_points(ground, {}, 100).has_value());  // 2 x 150 < 320 < 3 x 120
}

BOOST_AUTO_TEST_CASE(the_smallest_largest_space_is_the_even_one) {
  const SpacingGround ground(corner_to_corner(1000, 40, 150), {});
  // derived: 1000 / 7
  BOOST_TEST(std::abs(smallest_largest_space(ground, 1e-12, 8, 0) - 1000. / 7) < 1e-8);
  BOOST_TEST(smallest_largest_space(ground, 1e-12, 8, 145) == 145);
}

BOOST_AUTO_TEST_CASE(a_chain_at_its_limits_leaves_the_rest_to_the_largest_space) {
  SpacingProblem problem = corner_to_corner(1000, 40, 150);
  problem.zones = {{0, 250, {40, 50}}};
  const SpacingGround ground(problem, {});
  // derived: 250 / 50 = 5 spaces at their limit, 750 / 150 = 5 at 150: 11 points
  BOOST_TEST(fewest_points(ground, {1e-12}, 100).value() == 11u);
  BOOST_TEST(std::abs(smallest_largest_space(ground, 1e-12, 11, 0) - 150) < 1e-8);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

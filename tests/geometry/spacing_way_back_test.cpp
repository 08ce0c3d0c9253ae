#include "geometry/spacing_way_back.h"

#include <boost/test/unit_test.hpp>

#include "geometry/spacing_reach.h"

namespace sheerlap {
namespace {

constexpr std::size_t start_cell = 0;

/// 300 mm between two corners with a point on each, spaces of 40 to 110.
SpacingProblem example() {
  SpacingProblem problem;
  problem.to_mm = 300;
  problem.limits = {40, 110};
  return problem;
}

BOOST_AUTO_TEST_SUITE(spacing_way_back)

BOOST_AUTO_TEST_CASE(the_fewest_points_stand_where_the_rest_of_the_way_is_shortest) {
  // derived: four points and so five steps. The second point stands on 80 to 110: two
  // more spaces of at most 110 end at 300, and it is at most 110 from the first
  const SpacingGround ground(example(), {});
  const SpacingWayBack way_back(ground, {});
  BOOST_TEST_REQUIRE(ground.cells().size() == 3u);
  BOOST_TEST(way_back.meets(start_cell, 0, {0, 0}));
  BOOST_TEST(way_back.meets(1, 1, {0, 0}));
  BOOST_TEST(!way_back.meets(1, 2, {0, 79}));
  BOOST_TEST(way_back.meets(1, 2, {79, 81}));
  BOOST_TEST(way_back.meets(1, 2, {110, 110}));
  BOOST_TEST(way_back.meets(1, 3, {190, 190}));
  BOOST_TEST(!way_back.meets(1, 3, {110, 189}));
  BOOST_TEST(way_back.meets(1, 4, {300, 300}));
  BOOST_TEST(!way_back.meets(1, 3, {300, 300}));
}

BOOST_AUTO_TEST_CASE(an_end_distance_may_be_longer_than_the_spaces_beside_it) {
  // derived: the first point may be 200 from the end, past ground whose spaces are 60
  SpacingProblem problem = example();
  problem.start = {false, 0, 200};
  problem.zones = {{0, 150, {40, 60}}};
  const SpacingGround ground(problem, {});
  const SpacingWayBack way_back(ground, {});
  // two points, 190 to 200 and 300
  BOOST_TEST(fewest_points(ground, {}, 9).value() == 2u);
  BOOST_TEST(way_back.meets(start_cell, 0, {0, 0}));
}

BOOST_AUTO_TEST_CASE(ground_without_a_way_to_the_end_has_none) {
  SpacingProblem problem = example();
  problem.forbidden = {{100, 220}};
  const SpacingGround ground(problem, {});
  const SpacingWayBack way_back(ground, {});
  BOOST_TEST(!way_back.meets(start_cell, 0, {0, 0}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "geometry/spacing_give_way.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

/// 1000 mm between two corners with a point on each, spaces of 40 to 150.
SpacingProblem example(std::vector<Forbidden> forbidden) {
  SpacingProblem problem;
  problem.to_mm = 1000;
  problem.limits = {40, 150};
  problem.forbidden = std::move(forbidden);
  return problem;
}

BOOST_AUTO_TEST_SUITE(spacing_give_way)

BOOST_AUTO_TEST_CASE(ground_wider_than_its_limit_is_crossed_from_edge_to_edge) {
  const auto forced =
      forced_give_way(SpacingGround(example({{300, 460}, {600, 700}}), {}));
  BOOST_TEST_REQUIRE(forced.has_value());
  BOOST_TEST(forced->points_mm == (std::vector<double>{300, 460}));
  BOOST_TEST(forced->after_mm == std::vector<double>{300});
  BOOST_TEST(!forced->at_start);
}

BOOST_AUTO_TEST_CASE(what_is_forced_at_a_mirrored_end_is_half_the_space) {
  // derived: twice 80 across the end against 150; twice 70 would keep it
  SpacingProblem problem = example({{-25, 80}});
  problem.start.mirrored = true;
  const auto forced = forced_give_way(SpacingGround(problem, {}));
  BOOST_TEST_REQUIRE(forced.has_value());
  BOOST_TEST(forced->at_start);
  BOOST_TEST(forced->points_mm == std::vector<double>{80});
  problem.forbidden = {{-25, 70}};
  BOOST_TEST(!forced_give_way(SpacingGround(problem, {})).has_value());
}

BOOST_AUTO_TEST_CASE(no_point_is_forced_on_a_mirrored_end) {
  // the end of the ground is not forbidden, but only a fixed point may be on it
  SpacingProblem problem = example({{0, 400}});
  problem.start.mirrored = true;
  const auto forced = forced_give_way(SpacingGround(problem, {}));
  BOOST_TEST_REQUIRE(forced.has_value());
  BOOST_TEST(forced->points_mm == std::vector<double>{400});
  BOOST_TEST(forced->at_start);
}

BOOST_AUTO_TEST_CASE(nothing_is_forced_that_an_end_distance_may_cross) {
  // derived: the first point may be 400 from the end, so that only the second is wide
  SpacingProblem problem = example({{20, 400}, {600, 800}});
  problem.start.greatest_mm = 500;
  BOOST_TEST(!forced_give_way(SpacingGround(problem, {})).has_value());
  const auto spacing = space_out({problem});
  BOOST_TEST_REQUIRE(spacing.has_value());
  BOOST_TEST_REQUIRE(spacing->front().bridged.size() == 1u);
  BOOST_TEST(spacing->front().bridged[0].from_mm == 600);
}

BOOST_AUTO_TEST_CASE(the_general_search_gives_way_as_what_is_forced) {
  // property: two ways to one answer
  SpacingProblem problem = example({{300, 460}, {640, 800}});
  problem.zones = {{400, 700, {40, 90}}};
  const SpacingGround ground(problem, {});
  const auto forced = forced_give_way(ground);
  const auto sought = give_way_on(ground);
  BOOST_TEST_REQUIRE((forced && sought));
  BOOST_TEST(forced->points_mm == sought->points_mm);
  BOOST_TEST(forced->after_mm == sought->after_mm);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

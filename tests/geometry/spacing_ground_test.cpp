#include "geometry/spacing_ground.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/geometry/random_sides.h"
#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

/// A place in a cell that none of its edges decides about.
double inside(const SpacingCell& cell) { return (cell.from_mm + cell.to_mm) / 2; }

BOOST_AUTO_TEST_SUITE(spacing_ground)

BOOST_AUTO_TEST_CASE(allowed_ground_is_cut_at_zones_and_fixed_places) {
  SpacingProblem problem;
  problem.to_mm = 100;
  problem.limits = {1, 10};
  problem.zones = {{30, 200, {1, 5}}};
  problem.forbidden = {{10, 20}, {15, 25}, {60, 60}, {90, 120}};
  problem.fixed_mm = {50};
  const SpacingGround ground(problem, {});
  const std::pair<double, double> expected[] = {
      {0, 0}, {0, 10}, {25, 30}, {30, 30}, {30, 50}, {50, 50}, {50, 90}, {100, 100}};
  BOOST_TEST_REQUIRE(ground.cells().size() == std::size(expected));
  for (std::size_t index = 0; index < std::size(expected); ++index) {
    BOOST_TEST(ground.cells()[index].from_mm == expected[index].first);  // by hand
    BOOST_TEST(ground.cells()[index].to_mm == expected[index].second);
  }
  BOOST_TEST(ground.next_fixed(0) == 5u);
  BOOST_TEST(ground.next_fixed(5) == ground.end());
}

BOOST_AUTO_TEST_CASE(what_is_asked_between_cells_is_what_the_definition_says) {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) BOOST_TEST_CONTEXT(seed) {
      RandomNumbers random(seed);
      const SpacingProblem problem = random_stretch(random);
      const SpacingGround ground(problem, {});
      for (std::size_t from = 1; from < ground.end(); ++from)
        for (std::size_t to = from + 1; to < ground.end(); ++to) {
          const double left = inside(ground.cells()[from]);
          const double right = inside(ground.cells()[to]);
          if (!(left < right)) continue;
          const SpaceLimits limits = limits_between(problem, left, right);
          const SpacingStep asked = ground.asked(from, to);
          BOOST_TEST(asked.least_mm == limits.least_mm);  // derived: the definition
          BOOST_TEST(asked.greatest_mm == limits.greatest_mm);
        }
    }
}

BOOST_AUTO_TEST_CASE(fixed_places_that_are_too_close_are_no_space) {
  SpacingProblem problem;
  problem.to_mm = 100;
  problem.limits = {30, 60};
  problem.fixed_mm = {40, 60};
  const SpacingGround ground(problem, {});
  const auto first = ground.next_fixed(0);
  const SpacingStep step = ground.step(first, ground.next_fixed(first), {});
  BOOST_TEST(step.least_mm < 20);  // derived: they are 20 apart
  BOOST_TEST(step.spaces == 0);
}

BOOST_AUTO_TEST_CASE(a_limit_that_is_given_up_is_not_asked) {
  SpacingProblem problem;
  problem.to_mm = 900;
  problem.limits = {40, 150};
  problem.forbidden = {{400, 560}};
  const SpacingGround ground(problem, {{400, 560}, {400}, false});
  const auto first = ground.next_fixed(0);
  const auto second = ground.next_fixed(first);
  BOOST_TEST(ground.cells()[first].from_mm == 400);
  BOOST_TEST(ground.step(first, second, {}).greatest_mm >= 160);  // derived: 560 - 400
  BOOST_TEST(ground.step(second, ground.end(), {}).greatest_mm < 160);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

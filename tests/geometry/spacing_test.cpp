#include "geometry/spacing.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

/// Lengths of some hundred mm, in doubles.
constexpr double rounding_mm = 1e-11;

/// 900 mm between two ends that have a point, spaces from 40 to 150.
SpacingProblem corner_to_corner() {
  SpacingProblem problem;
  problem.to_mm = 900;
  problem.limits = {40, 150};
  return problem;
}

/// The same with end distances from 30 to 75.
SpacingProblem with_end_windows() {
  SpacingProblem problem = corner_to_corner();
  problem.start = problem.end = {false, 30, 75};
  return problem;
}

Spacing spacing_of(const SpacingProblem& problem) {
  const auto result = space_out({problem});
  BOOST_TEST_REQUIRE(result.has_value());
  return result->front();
}

void check_points(const Spacing& spacing, const std::vector<double>& expected) {
  BOOST_TEST_REQUIRE(spacing.points_mm.size() == expected.size());
  for (std::size_t index = 0; index < expected.size(); ++index)
    BOOST_TEST(std::abs(spacing.points_mm[index] - expected[index]) < rounding_mm,
               spacing.points_mm[index] << " is not " << expected[index]);
}

void check_bridged(const Spacing& spacing, const std::vector<BridgedSpace>& expected) {
  BOOST_TEST_REQUIRE(spacing.bridged.size() == expected.size());
  for (std::size_t index = 0; index < expected.size(); ++index) {
    const BridgedSpace& bridged = spacing.bridged[index];
    BOOST_TEST(std::abs(bridged.from_mm - expected[index].from_mm) < rounding_mm);
    BOOST_TEST(std::abs(bridged.to_mm - expected[index].to_mm) < rounding_mm);
    BOOST_TEST(std::abs(bridged.limit_mm - expected[index].limit_mm) < rounding_mm);
    BOOST_TEST(bridged.below_least == expected[index].below_least);
  }
}

BOOST_AUTO_TEST_SUITE(spacing)

BOOST_AUTO_TEST_CASE(a_run_has_the_fewest_spaces_that_keep_to_the_greatest) {
  const struct {
    double length, greatest;
    std::size_t points;
    double largest;
    const char* source;
  } rows[] = {
      {900, 150, 7, 150, "derived: 900 / 150 = 6 spaces, no remainder"},
      {900, 149, 8, 900. / 7, "derived: ceil(900 / 149) = 7 spaces"},
      {900 + 8e-7, 150, 7, 150 + 8e-7 / 6, "derived: 6 spaces, 9e-10 of 150 above it"},
      {900 + 2e-6, 150, 8, 900. / 7, "derived: 6 spaces are 2e-9 of 150 above it"},
      {75000, 150, 501, 150, "derived: 75000 / 150 = 500 spaces"},
      {100, 150, 2, 100, "derived: one space"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      SpacingProblem problem = corner_to_corner();
      problem.to_mm = row.length;
      problem.limits.greatest_mm = row.greatest;
      const Spacing spacing = spacing_of(problem);
      BOOST_TEST(spacing.points_mm.size() == row.points);
      BOOST_TEST(std::abs(spacing.largest_mm - row.largest) < 1e-6);
      BOOST_TEST(spacing.bridged.empty());
    }
}

BOOST_AUTO_TEST_CASE(the_spaces_of_a_run_are_equal_to_the_last_digit) {
  SpacingProblem problem = corner_to_corner();
  problem.limits.greatest_mm = 149;
  const Spacing spacing = spacing_of(problem);
  for (int index = 0; index <= 7; ++index)  // property: from + i (to - from) / 7
    BOOST_TEST(std::abs(spacing.points_mm[std::size_t(index)] - index * (900. / 7)) <=
               900 * std::numeric_limits<double>::epsilon());
}

BOOST_AUTO_TEST_CASE(the_end_windows_take_up_what_they_can) {
  // derived: (900 - 2 x 75) / 150 = 5 spaces
  check_points(spacing_of(with_end_windows()), {75, 225, 375, 525, 675, 825});
}

BOOST_AUTO_TEST_CASE(a_single_point_between_two_windows_stands_midway) {
  SpacingProblem problem = with_end_windows();
  problem.to_mm = 100;
  check_points(spacing_of(problem), {50});  // derived: 30..75 and 25..70 from the start
}

BOOST_AUTO_TEST_CASE(a_pair_at_the_least_space_stands_midway) {
  SpacingProblem problem = with_end_windows();
  problem.to_mm = 170;
  // derived: one point would be 85 from an end; two are closest at 40, 65 from each
  check_points(spacing_of(problem), {65, 105});
}

BOOST_AUTO_TEST_CASE(a_keep_out_wider_than_the_pitch_is_bridged_from_its_edges) {
  SpacingProblem problem = corner_to_corner();
  problem.forbidden = {{400, 560}};
  const Spacing spacing = spacing_of(problem);
  // derived: 400 / 150 and 340 / 150 take 3 spaces each, 133 1/3 and 113 1/3
  check_points(spacing,
               {0, 400. / 3, 800. / 3, 400, 560, 560 + 340. / 3, 560 + 680. / 3, 900});
  check_bridged(spacing, {{400, 560, 150}});
  BOOST_TEST(std::abs(spacing.largest_mm - 400. / 3) < rounding_mm);
  BOOST_TEST(spacing.points_mm[3] == 400);
  BOOST_TEST(spacing.points_mm[4] == 560);
}

BOOST_AUTO_TEST_CASE(a_keep_out_is_bridged_against_the_limit_of_its_zone) {
  SpacingProblem problem = corner_to_corner();
  problem.zones = {{0, 900, {40, 100}}};
  problem.forbidden = {{400, 520}};
  const Spacing spacing = spacing_of(problem);
  // derived: 400 / 100 = 4 spaces; 380 / 100 takes 4 of 95
  check_points(spacing, {0, 100, 200, 300, 400, 520, 615, 710, 805, 900});
  check_bridged(spacing, {{400, 520, 100}});
}

BOOST_AUTO_TEST_CASE(a_point_between_two_bridged_keep_outs_stands_midway) {
  SpacingProblem problem = corner_to_corner();
  problem.forbidden = {{400, 560}, {570, 730}};
  const Spacing spacing = spacing_of(problem);
  // derived: 330 in two spaces exceeds 150 by 30 wherever the point stands; 165 each
  check_bridged(spacing, {{400, 565, 150}, {565, 730, 150}});
}

BOOST_AUTO_TEST_CASE(an_excess_that_may_go_anywhere_is_spread_over_the_spaces) {
  SpacingProblem problem = corner_to_corner();
  problem.to_mm = 320;
  problem.limits = {120, 150};
  const Spacing spacing = spacing_of(problem);
  // derived: 2 x 150 < 320 < 3 x 120; the excess is 20; the ends keep their point
  check_points(spacing, {0, 160, 320});
  check_bridged(spacing, {{0, 160, 150}, {160, 320, 150}});
  BOOST_TEST(spacing.largest_mm == 0);
}

BOOST_AUTO_TEST_CASE(fixed_points_are_kept_even_if_they_are_too_close) {
  SpacingProblem problem = corner_to_corner();
  problem.fixed_mm = {320, 300};
  const Spacing spacing = spacing_of(problem);
  // derived: 300 / 150 = 2 spaces; 580 / 150 takes 4 of 145
  check_points(spacing, {0, 150, 300, 320, 465, 610, 755, 900});
  check_bridged(spacing, {{300, 320, 40, true}});
}

BOOST_AUTO_TEST_CASE(a_fixed_point_too_close_to_an_end_is_kept_and_listed) {
  SpacingProblem problem = with_end_windows();
  problem.to_mm = 50;
  problem.fixed_mm = {25};
  const Spacing spacing = spacing_of(problem);
  check_points(spacing, {25});  // derived: 25 < 30 on both sides
  check_bridged(spacing, {{0, 25, 30, true}, {25, 50, 30, true}});
}

BOOST_AUTO_TEST_CASE(a_covered_end_window_moves_the_first_point_to_the_far_edge) {
  SpacingProblem problem = with_end_windows();
  problem.forbidden = {{-10, 100}};
  const Spacing spacing = spacing_of(problem);
  // derived: (825 - 100) / 5 = 145
  check_points(spacing, {100, 245, 390, 535, 680, 825});
  check_bridged(spacing, {{0, 100, 75}});
}

BOOST_AUTO_TEST_CASE(a_stretch_without_room_for_a_point_is_one_bridged_space) {
  SpacingProblem problem = with_end_windows();
  problem.to_mm = 50;
  Spacing spacing = spacing_of(problem);
  BOOST_TEST(spacing.points_mm.empty());
  check_bridged(spacing, {{0, 50, 60, true}});  // derived: 30 + 30 do not fit

  problem = with_end_windows();
  problem.end.greatest_mm = 60;
  problem.forbidden = {{-1, 500}, {400, 901}};
  spacing = spacing_of(problem);
  BOOST_TEST(spacing.points_mm.empty());
  check_bridged(spacing, {{0, 900, 60}});  // derived: the smaller of 75 and 60
}

BOOST_AUTO_TEST_CASE(the_ends_of_a_forbidden_interval_are_allowed) {
  SpacingProblem problem = corner_to_corner();
  problem.forbidden = {{0, 150}, {150, 300}, {600, 750}};
  // derived: all of 150, 300, 600, 750 are edges
  check_points(spacing_of(problem), {0, 150, 300, 450, 600, 750, 900});
}

BOOST_AUTO_TEST_CASE(a_zone_holds_every_space_that_overlaps_it) {
  SpacingProblem problem = corner_to_corner();
  problem.zones = {{500, 900, {40, 100}}};
  // derived: 400 / 100 = 4 spaces in the zone, 500 / 150 takes 4 of 125 before it
  check_points(spacing_of(problem), {0, 125, 250, 375, 500, 600, 700, 800, 900});
}

BOOST_AUTO_TEST_CASE(a_zone_looser_than_the_common_limits_loosens_what_is_inside) {
  SpacingProblem problem = corner_to_corner();
  problem.to_mm = 850;
  problem.zones = {{450, 850, {40, 200}}};
  // derived: 450 / 150 = 3 spaces, 400 / 200 = 2
  check_points(spacing_of(problem), {0, 150, 300, 450, 650, 850});
  problem.zones = {{440, 850, {40, 200}}};
  // derived: a space across 440 has 150, so 450 is the last reached by 3 spaces
  check_points(spacing_of(problem), {0, 150, 300, 450, 650, 850});
  problem.zones = {{460, 850, {40, 200}}};
  // derived: 460 / 3 > 150, and 450 lies outside; 4 spaces up to the zone, then 2
  BOOST_TEST(spacing_of(problem).points_mm.size() == 7u);
}

BOOST_AUTO_TEST_CASE(where_zones_overlap_both_hold) {
  SpacingProblem problem = corner_to_corner();
  problem.zones = {{0, 600, {40, 120}}, {300, 900, {40, 100}}};
  // derived: 300 / 120 takes 3 spaces of 100, 600 / 100 = 6
  check_points(spacing_of(problem), {0, 100, 200, 300, 400, 500, 600, 700, 800, 900});
}

BOOST_AUTO_TEST_CASE(twice_the_distance_to_a_mirrored_end_is_a_space) {
  SpacingProblem problem = corner_to_corner();
  problem.start.mirrored = true;
  // derived: (900 - d) / 5 = 2 d = s: 5.5 spaces of 900 / 5.5 > 150; 6.5 of 138.46
  const double space = 900 / 6.5;
  check_points(spacing_of(problem), {space / 2, 1.5 * space, 2.5 * space, 3.5 * space,
                                     4.5 * space, 5.5 * space, 900});
  problem.end.mirrored = true;
  check_points(spacing_of(problem), {75, 225, 375, 525, 675, 825});  // 6 x 150
  BOOST_TEST(spacing_of(problem).largest_mm == 150);
}

BOOST_AUTO_TEST_CASE(one_point_between_two_mirrored_ends_is_spaced_from_itself) {
  SpacingProblem problem = corner_to_corner();
  problem.start.mirrored = problem.end.mirrored = true;
  problem.to_mm = 140;
  const Spacing spacing = spacing_of(problem);
  check_points(spacing, {70});  // derived: 2 x 70 <= 150 on both sides
  BOOST_TEST(spacing.largest_mm == 140);
}

BOOST_AUTO_TEST_CASE(a_fixed_point_on_a_mirrored_end_has_no_space_there) {
  SpacingProblem problem = corner_to_corner();
  problem.to_mm = 600;
  problem.start.mirrored = true;
  problem.fixed_mm = {0};
  check_points(spacing_of(problem), {0, 150, 300, 450, 600});  // derived: 600 / 150
}

BOOST_AUTO_TEST_CASE(
    a_bridge_across_a_mirrored_end_is_listed_with_half_the_limit_of_its_space) {
  SpacingProblem problem = corner_to_corner();
  problem.start.mirrored = true;
  problem.forbidden = {{-100, 100}};
  const Spacing spacing = spacing_of(problem);
  check_bridged(spacing, {{0, 100, 75}});      // derived: 2 x 100 > 150
  BOOST_TEST(spacing.points_mm.size() == 7u);  // derived: ceil(800 / 150) + 1
}

BOOST_AUTO_TEST_CASE(the_largest_space_is_shared_by_the_stretches) {
  SpacingProblem near = corner_to_corner();
  near.to_mm = 450;
  SpacingProblem far = corner_to_corner();
  far.to_mm = 500;
  far.forbidden = {{120, 140}};
  // derived: alone, 500 takes 4 spaces with 120 and 3 x 126 2/3 or 140 and 3 x 120;
  // the smaller largest is 126 2/3. Beside a stretch with 150 it may have 140.
  auto result = space_out({far});
  BOOST_TEST_REQUIRE(result.has_value());
  check_points((*result)[0], {0, 120, 120 + 380. / 3, 120 + 760. / 3, 500});
  result = space_out({near, far});
  BOOST_TEST_REQUIRE(result.has_value());
  // derived: 120^2 + 3 (380/3)^2 = 62533, 140^2 + 3 x 120^2 = 62800
  check_points((*result)[1], {0, 120, 120 + 380. / 3, 120 + 760. / 3, 500});
  BOOST_TEST((*result)[0].largest_mm == 150);
}

BOOST_AUTO_TEST_CASE(limits_that_leave_no_choice_are_kept_exactly) {
  SpacingProblem problem = with_end_windows();
  problem.limits = {150, 150};
  // derived: 900 - 5 x 150 = 150 = 2 x 75
  check_points(spacing_of(problem), {75, 225, 375, 525, 675, 825});
}

BOOST_AUTO_TEST_CASE(a_stretch_of_no_length_has_the_point_that_is_asked) {
  SpacingProblem problem = corner_to_corner();
  problem.to_mm = 0;
  check_points(spacing_of(problem), {0});  // both ends have their point at 0
  problem.start.mirrored = problem.end.mirrored = true;
  BOOST_TEST(spacing_of(problem).points_mm.empty());
  problem.fixed_mm = {0};
  check_points(spacing_of(problem), {0});
}

BOOST_AUTO_TEST_CASE(no_stretches_have_no_spacing) {
  const auto result = space_out({});
  BOOST_TEST_REQUIRE(result.has_value());
  BOOST_TEST(result->empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/hole_reasons.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

/// A side of 1000 mm with the bow centreline at 0 and a transom corner at the end.
LayoutStretch example_stretch() {
  LayoutStretch stretch;
  stretch.start_name = "the bow centreline";
  stretch.end_name = "the transom corner";
  stretch.problem.to_mm = 1000;
  stretch.problem.start = {true, 30, 75};
  stretch.problem.end = {false, 30, 75};
  stretch.problem.limits = {40, 150};
  return stretch;
}

SideObstacles example_obstacles() {
  return {{{Length::mm(400), Length::mm(500), Length::mm(25), "bow cleat"}},
          {{Length::mm(700), "lifting eye strap"}},
          {{Length::mm(0), Length::mm(300), "bow"}}};
}

std::vector<std::string> because(const std::vector<double>& points) {
  return stretch_reasons({points, {}, 0}, example_obstacles(), example_stretch())
      .because;
}

BOOST_AUTO_TEST_SUITE(hole_reasons_suite)

BOOST_AUTO_TEST_CASE(a_hole_is_held_by_what_it_touches) {
  const auto words = because({50, 150, 300, 400, 500, 700, 925});
  BOOST_TEST(words[0] == "half a space, 50 mm, from the bow centreline");
  BOOST_TEST(words[2] == "at the edge of the bow zone");
  BOOST_TEST(words[3] == "25 mm clear of the bow cleat");
  BOOST_TEST(words[4] == "25 mm clear of the bow cleat");
  BOOST_TEST(words[5] == "fixed: lifting eye strap");
  BOOST_TEST(words[6] == "75 mm from the transom corner, the most allowed");
}

BOOST_AUTO_TEST_CASE(a_hole_within_equal_spaces_says_which_one_it_ends) {
  const auto words = because({400, 500, 550, 600, 650, 700});
  BOOST_TEST(words[2] ==
             "equal space 1 of 4 between the bow cleat and the lifting eye "
             "strap");
  BOOST_TEST(words[4] ==
             "equal space 3 of 4 between the bow cleat and the lifting eye "
             "strap");
}

BOOST_AUTO_TEST_CASE(a_hole_between_unequal_spaces_says_both) {
  BOOST_TEST(because({500, 580, 700})[1] ==
             "80 mm from the hole before and 120 mm to the next, as their limits have "
             "it");
}

BOOST_AUTO_TEST_CASE(a_hole_that_a_limit_holds_says_whose) {
  LayoutStretch stretch = example_stretch();
  stretch.problem.zones = {{0, 300, {40, 100}}};
  const auto words =
      stretch_reasons({{100, 200, 330, 500}, {}, 0}, example_obstacles(), stretch)
          .because;
  BOOST_TEST(words[1] == "100 mm from the hole before, the most the bow zone allows");
}

BOOST_AUTO_TEST_CASE(runs_break_at_what_holds_a_hole) {
  const auto runs = stretch_reasons({{300, 400, 500, 600, 700}, {}, 0},
                                    example_obstacles(), example_stretch())
                        .runs;
  BOOST_TEST_REQUIRE(runs.size() == 3u);
  BOOST_TEST(runs[0].to.in_mm() == 400);
  BOOST_TEST(runs[2].from.in_mm() == 500);
  BOOST_TEST(runs[2].spaces == 2u);
  BOOST_TEST(runs[2].pitch.in_mm() == 100);
}

BOOST_AUTO_TEST_CASE(a_bridge_names_what_it_spans) {
  BOOST_TEST(bridged_what({380, 520, 120, false}, example_obstacles()) ==
             "the bow cleat");
  BOOST_TEST(bridged_what({560, 620, 40, false}, example_obstacles()) ==
             "the length there is between ends");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

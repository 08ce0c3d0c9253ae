#include "joint/adhesive.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

AdhesivePlan plan_of(const Joint& joint) {
  const auto plan = adhesive_plan(joint, perimeter_of(joint), 100);
  BOOST_TEST_REQUIRE(plan.has_value());
  return *plan;
}

/// What two upright faces `inner` and `outer` outside a box hold, in ml.
double box_ml(double girth, double inner, double outer, double band) {
  return band * (girth * (outer - inner) + 4 * (outer * outer - inner * inner)) / 1000;
}

/// A half boat with a bay 90 mm long, between two square corners to the inside.
Joint bay_joint(const ExampleFaces& faces) {
  Joint joint = example_joint({{0, 0, 0},
                               {0, 400, 0},
                               {1000, 400, 0},
                               {1000, 200, 0},
                               {1090, 200, 0},
                               {1090, 400, 0},
                               {2000, 400, 0},
                               {2000, 0, 0}},
                              faces);
  joint.sheer.curve = CurveKind::Chords;
  return joint;
}

BOOST_AUTO_TEST_SUITE(adhesive_suite)

BOOST_AUTO_TEST_CASE(a_box_holds_its_walls_and_its_four_mitred_corners) {
  // derived: the plan area between the box moved out by a and by b is
  // P (b - a) + 4 (b^2 - a^2)
  BOOST_TEST(plan_of(box_joint(2000, 1000, {})).nominal.joint.in_ml() ==
                 box_ml(6000, 0, 3, 50),
             tolerance(1e-12));
  ExampleFaces out;
  out.hull_top = out.hull_low = 2;
  out.lip_top = out.lip_low = 5;
  BOOST_TEST(plan_of(box_joint(2000, 1000, out)).nominal.joint.in_ml() ==
                 box_ml(6000, 2, 5, 50),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(draft_is_integrated_down_the_lap) {
  // derived: b from 2 to 4, so the mean of b is 3 and of b^2 28/3
  ExampleFaces faces;
  faces.lip_top = 2;
  faces.lip_low = 4;
  BOOST_TEST(plan_of(box_joint(2000, 1000, faces)).nominal.joint.in_ml() ==
                 50 * (6000 * 3 + 4 * 28. / 3) / 1000,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(only_the_open_part_of_an_interfering_joint_is_filled) {
  // derived: b from -2 to 2 is open below 25: mean of b there 1, of b^2 4/3
  ExampleFaces faces;
  faces.lip_top = -2;
  faces.lip_low = 2;
  BOOST_TEST(plan_of(box_joint(2000, 1000, faces)).nominal.joint.in_ml() ==
                 25 * (6000 * 1 + 4 * 4. / 3) / 1000,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_bond_band_bounds_volume_and_area) {
  Joint joint = box_joint(2000, 1000, {});
  joint.bond.from = Length::mm(5);
  joint.bond.to = Length::mm(45);
  const AdhesivePlan plan = plan_of(joint);
  BOOST_TEST(plan.nominal.joint.in_ml() == box_ml(6000, 0, 3, 40), tolerance(1e-12));
  BOOST_TEST(plan.bond_area_mm2 == 6000 * 40, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_bond_area_is_that_of_the_leaning_hull_face) {
  // derived: the hull leans in by 10 over 50: its girth shrinks by 8 for each 1 in, on
  // average by 40, and each mm down is hypot(1, 0.2) of face
  ExampleFaces faces;
  faces.hull_low = -10;
  BOOST_TEST(plan_of(box_joint(2000, 1000, faces)).bond_area_mm2 ==
                 (6000 - 40) * 50 * std::hypot(1, 0.2),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_round_joint_holds_a_ring) {
  // derived: pi (803^2 - 800^2) by 50; the spline is within 1e-7 of the circle
  BOOST_TEST(plan_of(circle_joint(800, 61, {})).nominal.joint.in_ml() ==
                 std::numbers::pi * (803. * 803 - 800. * 800) * 50 / 1000,
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(an_opening_takes_its_own_length_away) {
  // derived: from 300 to 700 on the transom's drill line of 1016, which starts 8
  // outboard of the corner: 400 of the wall, no corner
  Joint joint = box_joint(2000, 1000, {});
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(300), Length::mm(700)}, "well"});
  BOOST_TEST(plan_of(joint).nominal.joint.in_ml() ==
                 box_ml(6000, 0, 3, 50) - 400 * 3 * 50 / 1000.,
             tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(least_and_most_are_the_lip_1_mm_closer_and_further) {
  const AdhesivePlan plan = plan_of(box_joint(2000, 1000, {}));
  BOOST_TEST(plan.least->joint.in_ml() == box_ml(6000, 0, 2, 50), tolerance(1e-12));
  BOOST_TEST(plan.most->joint.in_ml() == box_ml(6000, 0, 4, 50), tolerance(1e-12));
  BOOST_TEST(plan.least->boat.in_ml() < plan.nominal.boat.in_ml());
  BOOST_TEST(plan.nominal.boat.in_ml() < plan.most->boat.in_ml());
}

BOOST_AUTO_TEST_CASE(the_bead_covers_the_section_and_its_squeeze_out) {
  // derived: 50 x 3 x 1.1 = 165 mm2, laid as a triangle of 20: 200 mm2 over 6000
  const AdhesivePlan plan = plan_of(box_joint(2000, 1000, {}));
  BOOST_TEST_REQUIRE(plan.beads.size() == 3u);
  BOOST_TEST(plan.nominal.bead.in_ml() == 1200, tolerance(1e-12));
  // derived: 1200 x 1.05 = 1260; / 400 = 3.15, four packs; 1260 + 4 x 30
  BOOST_TEST(plan.nominal.packs == 4u);
  BOOST_TEST(plan.nominal.boat.in_ml() == 1380, tolerance(1e-12));
  BOOST_TEST(
      (check_named(plan.checks, "adhesive.bead_size").state == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_largest_bead_too_small_is_laid_several_times_and_warned_of) {
  Joint joint = box_joint(2000, 1000, {});
  joint.adhesive->bead_sizes = {Length::mm(6), Length::mm(14)};
  const AdhesivePlan plan = plan_of(joint);
  const Check check = check_named(plan.checks, "adhesive.bead_size");
  BOOST_TEST((check.state == CheckState::Warn));
  BOOST_TEST(check.what ==
             "the largest bead, 14 mm, is too small on starboard and port at girth 0 "
             "to 2500 mm along the sheer: 2 of 14 mm side by side");
  BOOST_TEST(check.value == 165, tolerance(1e-12));
  BOOST_TEST(*check.limit == 98, tolerance(1e-12));
  BOOST_TEST(plan.nominal.bead.in_ml() == 2 * 98 * 6.0, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_time_is_planned_where_shop_and_working_time_are_given) {
  Joint joint = box_joint(2000, 1000, {});
  joint.adhesive->working_time = Duration::minutes(50);
  BOOST_TEST(!plan_of(joint).time.has_value());
  Shop shop;
  shop.gun_rate = 138;
  shop.screw_rate = 10;
  joint.shop = shop;
  const AdhesivePlan plan = plan_of(joint);
  BOOST_TEST_REQUIRE(plan.time.has_value());
  // derived: 1380 / 138 = 10 min; 100 fasteners at 10 a minute
  BOOST_TEST(plan.time->total.in_minutes() == 20, tolerance(1e-12));
  BOOST_TEST(
      (check_named(plan.checks, "adhesive.working_time").state == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(corners_that_meet_as_drawn_are_not_refused_for_a_lip_moved_off) {
  // derived: a bay of 90 mm is made while both corners cut the lip back by less than 45:
  // upright, it stands 44.5 off as drawn (44.7 outside), 45.5 when moved
  ExampleFaces faces;
  faces.lip_top = 44.5;
  faces.lip_low = 44.5;
  faces.lip_thickness = 0.2;
  const Joint joint = bay_joint(faces);
  const AdhesivePlan plan = plan_of(joint);
  BOOST_TEST(plan.least.has_value());
  BOOST_TEST(!plan.most.has_value());
  const Check check = check_named(plan.checks, "adhesive.most");
  BOOST_TEST((check.state == CheckState::Warn));
  BOOST_TEST(check.what.starts_with(
      "the most is left out: with the lip 1 mm further off the faces on both sides of "
      "this corner do not meet"));
}

BOOST_AUTO_TEST_CASE(a_corner_that_cannot_be_made_names_its_row) {
  // derived: a bay 90 mm long between two square corners to the inside; at the foot of
  // the lap the lip stands 50 off the sheer and is cut back by 50 at both, more than
  // there is; at the drill line, 25 deep, it is not
  ExampleFaces faces;
  faces.lip_top = 0;
  faces.lip_low = 50;
  const auto perimeter = sheerlap::perimeter(bay_joint(faces));
  BOOST_TEST_REQUIRE(!perimeter.has_value());
  BOOST_TEST(perimeter.error().front().where == "sheer.row[3]");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

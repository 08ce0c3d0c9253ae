#include "joint/seated_joint.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "joint/boat_perimeter.h"
#include "joint/gap_profile.h"
#include "joint/layout.h"
#include "joint/seating.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// What follows from a joint's best seating.
SeatedJoint followed(const Joint& joint, const Perimeter& perimeter) {
  const auto seated = seating(joint, joint.seating, perimeter);
  BOOST_TEST_REQUIRE(seated.has_value());
  const auto drawn = fit(joint, perimeter);
  BOOST_TEST_REQUIRE(drawn.has_value());
  const auto holes = layout(joint, perimeter);
  BOOST_TEST_REQUIRE(holes.has_value());
  const auto as_drawn = joint_follows(joint, perimeter, *drawn, *holes);
  const auto best = seated_follows(joint, perimeter, *holes, seated->corrections);
  BOOST_TEST_REQUIRE((as_drawn.has_value() && best.has_value()));
  return {*as_drawn, *best};
}

BOOST_AUTO_TEST_SUITE(seated_joint_suite)

BOOST_AUTO_TEST_CASE(a_lid_that_stands_best_as_drawn_changes_nothing) {
  // property: on a circle with an even gap every move makes one side tighter
  const Joint joint = circle_joint(2000, 48, ExampleFaces());
  const SeatedJoint follows = followed(joint, perimeter_of(joint));
  BOOST_TEST(
      follows.seated.adhesive.joint.in_ml() == follows.drawn.adhesive.joint.in_ml(),
      tolerance(1e-9));
  BOOST_TEST(follows.seated.girth.good.in_mm() == follows.drawn.girth.good.in_mm(),
             tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_lid_off_its_hull_is_brought_back_and_the_gaps_with_it) {
  // derived: a whole circle whose hull is read d nearer to the lid on one side and
  // further off on the other, d cos(angle), is one moved by d; the best seating moves
  // the lid after it, and the gaps are the drawn ones again
  const Joint joint = circle_joint(2000, 48, ExampleFaces());
  const Perimeter drawn = perimeter_of(joint);
  constexpr double moved = 1.5;
  std::vector<SideCorrections> corrections;
  for (const PerimeterSide& side : drawn.sides) {
    SideCorrections of{side.name, {}};
    const double sign = side.name == SideName::Starboard ? -1 : 1;
    for (int i = 0; i <= 60; ++i) {
      const double share = i / 60.0;
      const Length off = Length::mm(sign * moved * std::sin(std::numbers::pi * share));
      of.at.push_back({share * side.drill_line_length, off, off, false, "", {}, false});
    }
    corrections.push_back(of);
  }
  const auto boat = boat_perimeter(joint, drawn, corrections);
  BOOST_TEST_REQUIRE(boat.has_value());
  const auto seated = seating(joint, joint.seating, *boat);
  BOOST_TEST_REQUIRE(seated.has_value());
  BOOST_TEST(std::abs(seated->dy.in_mm() - moved) < 0.01);
  const auto back = boat_perimeter(joint, *boat, seated->corrections);
  BOOST_TEST_REQUIRE(back.has_value());
  for (const PerimeterSide& side : back->sides) {
    const GapProfile profile(*back, side);
    // straight between readings 105 mm apart: 1.5 (1 - cos(pi/120)), and 0.01 of the
    // corrections kept
    for (const GapSection& section : profile.sections(37))
      BOOST_TEST(std::abs(section.top_mm - 3) < 0.02);
  }
}

BOOST_AUTO_TEST_CASE(counts_of_fasteners_add_up_to_the_holes) {
  const Joint joint = example_joint(small_boat(), ExampleFaces());
  const Perimeter perimeter = perimeter_of(joint);
  const SeatedJoint follows = followed(joint, perimeter);
  const auto holes = layout(joint, perimeter);
  for (const JointFollows* of : {&follows.drawn, &follows.seated}) {
    std::size_t count = 0;
    for (const FastenersOfLength& one : of->fasteners) count += one.count;
    BOOST_TEST(count == holes->count);
  }
}

BOOST_AUTO_TEST_CASE(the_way_down_is_judged_on_the_hull_as_it_stands) {
  // derived: a box 2000 wide and a lid 3 off it; its sides 8 further out in the middle,
  // where no spreader holds them, are 5 in the way of a lid straight down
  Joint joint = box_joint(4000, 2000, ExampleFaces());
  joint.seating.readings = {
      {Length::mm(2000), "", Length::mm(2000), Length::mm(2016), std::nullopt}};
  const Perimeter perimeter = perimeter_of(joint);
  const auto holes = layout(joint, perimeter);
  const auto seated = seating(joint, joint.seating, perimeter);
  BOOST_TEST_REQUIRE((holes.has_value() && seated.has_value()));
  const auto follows = seated_follows(joint, perimeter, *holes, seated->corrections);
  BOOST_TEST_REQUIRE(follows.has_value());
  BOOST_TEST_REQUIRE(follows->entry.has_value());
  BOOST_TEST(std::abs(follows->entry->face.worst.in_mm() + 5) < 0.05);
  BOOST_TEST((seated_entry_check(joint, *follows->entry).state == CheckState::Fail));
  BOOST_TEST(straight_entry(perimeter).face.worst.in_mm() == 3.0, tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

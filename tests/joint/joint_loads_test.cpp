#include "joint/joint_loads.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"
#include "tests/joint/example_strength.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

constexpr auto starboard = SideName::Starboard, port = SideName::Port;

/// A box 4000 by 2000: half bow 1008, sides 4016, transom 2016 on the drill line.
Joint example() { return with_strength(box_joint(4000, 2000, {}), {0, 0, 0}); }

JointLoads loads_of(const Joint& joint) {
  const auto loads = JointLoads::of(joint, perimeter_of(joint));
  BOOST_TEST_REQUIRE(loads.has_value(), (loads ? "" : loads.error().front().message));
  return *loads;
}

StretchLoad stretch(SideChoice side, double from_mm, double to_mm, JointLoad load) {
  return {{side, Length::mm(from_mm), Length::mm(to_mm), false}, load, "shroud"};
}

PlaceLoad force(double at_mm,
                double newton,
                double spread_mm,
                LoadDirection direction) {
  return {SideChoice::Starboard,
          Length::mm(at_mm),
          false,
          newton,
          direction,
          Length::mm(spread_mm),
          "cleat"};
}

BOOST_AUTO_TEST_SUITE(joint_loads)

BOOST_AUTO_TEST_CASE(hull_torsion_and_deck_add_up_as_worked_elsewhere) {
  // derived: Q6, T2 and P1 in an independent script: 7.29830 + 0.909091 and a wide
  // strip of 6.96578 kN/m2 over 600 mm
  Joint joint = example();
  const auto hull = SectionPart::Hull, deck = SectionPart::Deck;
  joint.loads->girder = {20000,
                         5e6,
                         {{-1250, 0, 1250, 0, 10, 1, hull},
                          {1250, 0, 1250, 1100, 6, 1, hull},
                          {1250, 1100, -1250, 1100, 5, 1, deck},
                          {-1250, 1100, -1250, 0, 6, 1, hull}}};
  DeckLoad panel;
  panel.span = Length::mm(600);
  panel.pressure = 6.96578;
  joint.loads->panel = panel;
  const JointLoad load = loads_of(joint).at(starboard, Length::mm(3000));
  BOOST_TEST(load.along == 8.20739, tolerance(2e-6));
  BOOST_TEST(load.across == 2.08973, tolerance(2e-6));
  BOOST_TEST(load.off == 0);
}

BOOST_AUTO_TEST_CASE(a_deck_of_known_length_loads_by_the_series_of_a_plate) {
  // derived: 0.503354 at twice as long as wide, the series in an independent script;
  // 6.96578e-3 x 600 x that
  Joint joint = example();
  DeckLoad panel;
  panel.span = Length::mm(600);
  panel.length = Length::mm(1200);
  panel.waterline_length = Length::mm(8500);
  panel.category_factor = 0.8;
  panel.displacement_kg = 3500;
  joint.loads->panel = panel;
  BOOST_TEST(
      loads_of(joint).at(port, Length::mm(9)).across == 6.96578e-3 * 600 * 0.503354,
      tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_force_is_all_on_the_joint_there_is) {
  // derived: 1200 N over 200 mm; 60 mm from the side's end over 160 mm
  Joint joint = example();
  joint.loads->points = {force(3000, 1200, 200, LoadDirection::Across),
                         force(60, 1200, 200, LoadDirection::Off)};
  const JointLoads loads = loads_of(joint);
  BOOST_TEST(loads.at(starboard, Length::mm(3050)).across == 6, tolerance(1e-12));
  BOOST_TEST(loads.at(starboard, Length::mm(3101)).across == 0);
  BOOST_TEST(loads.at(starboard, Length()).off == 7.5, tolerance(1e-12));
  BOOST_TEST(loads.at(starboard, Length::mm(161)).off == 0);
  BOOST_TEST(loads.at(port, Length::mm(3050)).across == 0);
}

BOOST_AUTO_TEST_CASE(loads_that_abut_are_not_added_where_they_meet) {
  Joint joint = example();
  joint.loads->stretches = {stretch(SideChoice::Starboard, 2000, 3000, {5, 0, 0}),
                            stretch(SideChoice::Starboard, 3000, 4000, {7, 1, 0})};
  const JointLoads loads = loads_of(joint);
  // derived: of the two hands the one loaded more
  BOOST_TEST(loads.at(starboard, Length::mm(3000)).along == 7);
  BOOST_TEST(loads.at(starboard, Length::mm(2000)).along == 5);
  BOOST_TEST(loads.at(starboard, Length::mm(4000)).across == 1);
  BOOST_TEST(loads.shares_at(starboard, Length::mm(3000)).size() == 1u);
}

BOOST_AUTO_TEST_CASE(the_mean_counts_what_lies_between_two_places) {
  Joint joint = example();
  joint.loads->along = 2;
  joint.loads->stretches = {stretch(SideChoice::Starboard, 2050, 2150, {10, 0, 4})};
  const JointLoads loads = loads_of(joint);
  // derived: 2 + 10 x 50 / 100, 4 x 100 / 400, and nothing of it
  BOOST_TEST(loads.mean(starboard, Length::mm(2000), Length::mm(2100)).along == 7,
             tolerance(1e-12));
  BOOST_TEST(loads.mean(starboard, Length::mm(1900), Length::mm(2300)).off == 1,
             tolerance(1e-12));
  BOOST_TEST(loads.mean(starboard, Length::mm(2150), Length::mm(2300)).along == 2,
             tolerance(1e-12));
  BOOST_TEST(loads.mean(starboard, Length::mm(2100), Length::mm(2100)).along == 12,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_closed_joint_ends_nowhere_and_an_opening_ends_it_twice) {
  Joint joint = example();
  BOOST_TEST(!loads_of(joint).free_end(starboard, Length::mm(3000)).has_value());
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(600), Length::mm(1416), false}, "well"});
  const JointLoads loads = loads_of(joint);
  // derived: ring 2 x 1008 + 2 x 4016 + 2016 less 816 of opening; on starboard 1000 mm
  // before the corner there is 600 of transom beyond it
  const auto end = loads.free_end(starboard, Length::mm(4024));
  BOOST_TEST_REQUIRE(end.has_value());
  BOOST_TEST(end->distance.in_mm() == 1600, tolerance(1e-9));
  BOOST_TEST(end->length.in_mm() == 11248, tolerance(1e-9));
  const auto image = loads.free_end(port, Length::mm(4024));  // property: symmetry
  BOOST_TEST(image->distance.in_mm() == 1600, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_load_off_its_side_is_refused_at_its_own_address) {
  const auto refused = [](const Joint& joint) {
    const auto loads = JointLoads::of(joint, perimeter_of(joint));
    BOOST_TEST_REQUIRE(!loads.has_value());
    return loads.error().front().where;
  };
  Joint joint = example();
  joint.loads->stretches = {stretch(SideChoice::Starboard, 1, 2, {1, 0, 0}),
                            stretch(SideChoice::Port, 4000, 9000, {1, 0, 0})};
  BOOST_TEST(refused(joint).starts_with("load[1]"));
  joint.loads->stretches.clear();
  joint.loads->points = {force(9000, 1, 1, LoadDirection::Along)};
  BOOST_TEST(refused(joint).starts_with("point_load[0]"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/layout.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

namespace tt = boost::test_tools;

/// A box 4000 by 2000 whose drill line stands 8 mm outside the sheer: half bow 1008,
/// sides 4016, transom 2016.
Joint example() { return box_joint(4000, 2000, {}); }

Result<Layout> layout_of(const Joint& joint) {
  const auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  return layout(joint, *perimeter);
}

const LayoutSide& side_of(const Layout& layout, SideName name) {
  for (const LayoutSide& side : layout.sides)
    if (side.name == name) return side;
  BOOST_FAIL("no such side");
  return layout.sides.front();
}

KeepOut keep_out(SideChoice side, double from_mm, double to_mm, double clear_mm) {
  return {{side, Length::mm(from_mm), Length::mm(to_mm), false},
          Length::mm(clear_mm),
          "fuel fill"};
}

BOOST_AUTO_TEST_SUITE(layout_suite)

BOOST_AUTO_TEST_CASE(a_box_takes_the_fewest_holes_that_keep_the_pitch) {
  // derived: half bow from the centreline to 75 off the corner: 933 = 6 1/2 spaces of
  // 143.54 (5 1/2 would be 169.6); side (4016 - 150) / 26 = 148.69 (25: 154.6);
  // transom (2016 - 150) / 13 = 143.54 (12: 155.5). 7 + 27 a side and 14 = 82
  const auto layout = layout_of(example());
  BOOST_TEST_REQUIRE(layout.has_value());
  BOOST_TEST(layout->count == 82u);
  const LayoutSide& starboard = side_of(*layout, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.girths.size() == 34u);
  BOOST_TEST(starboard.girths[0].in_mm() == 933 / 13., tt::tolerance(1e-9));
  BOOST_TEST(starboard.girths[6].in_mm() == 933, tt::tolerance(1e-9));
  BOOST_TEST(starboard.girths[7].in_mm() == 1083, tt::tolerance(1e-9));
  BOOST_TEST((starboard.girths[8] - starboard.girths[7]).in_mm() == 3866. / 26,
             tt::tolerance(1e-9));
  BOOST_TEST(layout->largest_pitch.in_mm() == 3866. / 26, tt::tolerance(1e-9));
  BOOST_TEST(starboard.because[6] ==
             "75 mm from the corner at girth 1008 mm, the most "
             "allowed");
  BOOST_TEST(side_of(*layout, SideName::Transom).girths.size() == 14u);
}

BOOST_AUTO_TEST_CASE(port_mirrors_starboard_where_nothing_differs) {
  const auto layout = layout_of(example());
  const LayoutSide& starboard = side_of(*layout, SideName::Starboard);
  const LayoutSide& port = side_of(*layout, SideName::Port);
  BOOST_TEST_REQUIRE(port.girths.size() == starboard.girths.size());
  for (std::size_t i = 0; i < port.girths.size(); ++i)
    BOOST_TEST((port.girths[i] - starboard.girths[i]).in_mm() == 0);
}

BOOST_AUTO_TEST_CASE(a_keep_out_wider_than_the_pitch_is_bridged_on_its_side_alone) {
  Joint joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Starboard, 3000, 3110, 25));
  const auto layout = layout_of(joint);
  const LayoutSide& starboard = side_of(*layout, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.bridged.size() == 1u);
  BOOST_TEST(starboard.bridged[0].from.in_mm() == 2975);
  BOOST_TEST(starboard.bridged[0].to.in_mm() == 3135);
  BOOST_TEST(starboard.bridged[0].pitch.in_mm() == 160);
  BOOST_TEST(starboard.bridged[0].limit.in_mm() == 150);
  BOOST_TEST(starboard.bridged[0].what == "the fuel fill");
  BOOST_TEST(side_of(*layout, SideName::Port).bridged.empty());
  BOOST_TEST_REQUIRE(layout->checks.size() == 3u);
  BOOST_TEST(layout->checks[0].id == "layout.bridged");
  BOOST_TEST((layout->checks[0].state == CheckState::Fail));
  bool edge = false;
  for (const std::string& because : starboard.because)
    edge = edge || because == "25 mm clear of the fuel fill";
  BOOST_TEST(edge);
}

BOOST_AUTO_TEST_CASE(a_clearance_goes_on_round_the_corner) {
  // the plate ends 10 mm short of the transom's starboard corner; 90 mm clear of it
  // reaches 80 mm forward of the corner, past the 75 mm the end distance allows
  Joint joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Transom, 10, 200, 90));
  const auto layout = layout_of(joint);
  const LayoutSide& starboard = side_of(*layout, SideName::Starboard);
  BOOST_TEST(starboard.girths.back().in_mm() == 5024 - 80, tt::tolerance(1e-9));
  BOOST_TEST(starboard.because.back() == "90 mm clear of the fuel fill");
  const LayoutSide& port = side_of(*layout, SideName::Port);
  BOOST_TEST(port.girths.back().in_mm() == 5024 - 75, tt::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_zone_has_a_pitch_of_its_own) {
  Joint joint = example();
  joint.zones.push_back({{SideChoice::Both, Length(), Length::mm(1008), false},
                         Length::mm(100),
                         std::nullopt,
                         "bow"});
  const auto layout = layout_of(joint);
  const LayoutSide& starboard = side_of(*layout, SideName::Starboard);
  // derived: 933 / 9 1/2 = 98.2 (8 1/2: 109.8)
  BOOST_TEST(starboard.girths[0].in_mm() == 933 / 19., tt::tolerance(1e-9));
  BOOST_TEST((starboard.girths[1] - starboard.girths[0]).in_mm() == 933 / 9.5,
             tt::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_place_has_a_hole) {
  Joint joint = example();
  joint.places.push_back(
      {SideChoice::Port, Length::mm(2500), false, "lifting eye strap"});
  const auto layout = layout_of(joint);
  const LayoutSide& port = side_of(*layout, SideName::Port);
  bool there = false;
  for (std::size_t i = 0; i < port.girths.size(); ++i)
    if (std::abs(port.girths[i].in_mm() - 2500) < 1e-9) {
      there = true;
      BOOST_TEST(port.because[i] == "fixed: lifting eye strap");
    }
  BOOST_TEST(there);
}

BOOST_AUTO_TEST_CASE(a_place_on_the_bow_centreline_is_one_hole) {
  Joint joint = example();
  joint.places.push_back({SideChoice::Port, Length(), false, "bow eye"});
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(layout.has_value());
  // derived: from the datum to 75 off the corner 933 = 7 spaces of 133.3 (6: 155.5)
  BOOST_TEST(side_of(*layout, SideName::Starboard).girths[0].in_mm() == 0);
  BOOST_TEST(side_of(*layout, SideName::Starboard).girths[1].in_mm() == 933. / 7,
             tt::tolerance(1e-9));
  BOOST_TEST(side_of(*layout, SideName::Port).girths[0].in_mm() == 933. / 7,
             tt::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_pitch_is_held_against_the_limit_of_its_own_ground) {
  Joint joint = example();
  joint.zones.push_back({{SideChoice::Both, Length(), Length::mm(1008), false},
                         Length::mm(250),
                         std::nullopt,
                         "bow"});
  const auto layout = layout_of(joint);
  for (const Check& check : layout->checks)
    BOOST_TEST((check.state == CheckState::Pass));
  // derived: bow 933 / 4 1/2 = 207.3 of 250; side 148.69 of 150, which is nearer
  BOOST_TEST(layout->checks[0].value == 3866. / 26, tt::tolerance(1e-9));
  BOOST_TEST(*layout->checks[0].limit == 150);
}

BOOST_AUTO_TEST_CASE(a_place_on_the_edge_of_an_opening_is_refused) {
  Joint joint = example();
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(600), Length::mm(1440), false},
       "outboard well"});
  joint.places.push_back({SideChoice::Transom, Length::mm(1440), false, "eye"});
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(!layout.has_value());
  BOOST_TEST(layout.error().front().where == "place[0].at");
}

BOOST_AUTO_TEST_CASE(a_place_in_a_keep_out_is_refused) {
  Joint joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Both, 2400, 2480, 25));
  joint.places.push_back(
      {SideChoice::Port, Length::mm(2500), false, "lifting eye strap"});
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(!layout.has_value());
  BOOST_TEST(layout.error().front().where == "place[0].at");
  BOOST_TEST(layout.error().front().message ==
             "lifting eye strap at 2500.0 mm on port stands in the keep-out fuel fill, "
             "2375.0 to 2505.0 mm with its clearance: move the one or the other");
}

BOOST_AUTO_TEST_CASE(a_keep_out_off_the_end_is_refused) {
  Joint joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Starboard, 5000, 5100, 0));
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(!layout.has_value());
  BOOST_TEST(layout.error().front().where == "keepout[0].to");
  BOOST_TEST(
      layout.error().front().message ==
      "keep-out fuel fill: 5100.0 mm is off the end of the starboard drill line: 0 to "
      "5024.0 mm");
}

BOOST_AUTO_TEST_CASE(zone_limits_that_cross_are_refused) {
  Joint joint = example();
  joint.zones.push_back({{SideChoice::Both, Length(), Length::mm(1000), false},
                         Length::mm(30),
                         std::nullopt,
                         ""});
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(!layout.has_value());
  BOOST_TEST(layout.error().front().where == "zone[0].pitch_max");
}

BOOST_AUTO_TEST_CASE(zones_by_girth_and_by_x_that_exclude_each_other_are_refused) {
  Joint joint = example();
  const auto zone = [](bool by_x, double from, double to) {
    return Zone{{SideChoice::Port, Length::mm(from), Length::mm(to), by_x},
                std::nullopt,
                std::nullopt,
                ""};
  };
  // the girth from 1500 to 2500 and x from 1000 to 2000 overlap on any side of a box
  // 1000 to 2000 wide
  joint.zones = {zone(false, 1500, 2500), zone(true, 1000, 2000)};
  joint.zones[0].pitch_max = Length::mm(60);
  joint.zones[0].what = "cleat";
  joint.zones[1].pitch_min = Length::mm(70);
  joint.zones[1].what = "rail";
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(!layout.has_value());
  BOOST_TEST_REQUIRE(layout.error().size() == 1u);
  BOOST_TEST(layout.error().front().where == "zone[1]");
  BOOST_TEST(layout.error().front().message.starts_with(
      "zone cleat and zone rail overlap on port, and no pitch keeps the limits of "
      "both, "
      "40.0 to 60.0 mm and 70.0 to 150.0 mm"));
  joint.zones[1].pitch_min = Length::mm(60);
  BOOST_TEST(layout_of(joint).has_value());
}

BOOST_AUTO_TEST_CASE(holes_stop_at_an_opening) {
  Joint joint = example();
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(600), Length::mm(1440), false},
       "outboard well"});
  const auto layout = layout_of(joint);
  const LayoutSide& transom = side_of(*layout, SideName::Transom);
  // derived: (600 - 150) / 150 = 3 spaces, (576 - 150) / 3 = 142
  BOOST_TEST_REQUIRE(transom.girths.size() == 8u);
  BOOST_TEST(transom.girths[3].in_mm() == 525, tt::tolerance(1e-9));
  BOOST_TEST(transom.girths[4].in_mm() == 1515, tt::tolerance(1e-9));
  BOOST_TEST(transom.because[3] == "75 mm from the outboard well, the most allowed");
}

BOOST_AUTO_TEST_CASE(a_bridge_across_the_bow_is_judged_by_its_whole_space) {
  Joint joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Starboard, 0, 100, 25));
  auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(layout.has_value());
  const auto& bridged = side_of(*layout, SideName::Starboard).bridged;
  BOOST_TEST_REQUIRE(bridged.size() == 1u);
  BOOST_TEST(bridged[0].to.in_mm() == 125);
  BOOST_TEST(bridged[0].pitch.in_mm() == 250);  // derived: 2 x 125 across the bow
  BOOST_TEST(bridged[0].limit.in_mm() == 150);

  joint = example();
  joint.keepouts.push_back(keep_out(SideChoice::Starboard, 1, 200, 0));
  joint.places.push_back({SideChoice::Starboard, Length::mm(0), false, "stem"});
  layout = layout_of(joint);
  BOOST_TEST_REQUIRE(layout.has_value());
  const auto& beside = side_of(*layout, SideName::Starboard).bridged;
  BOOST_TEST_REQUIRE(beside.size() == 1u);
  BOOST_TEST(beside[0].pitch.in_mm() == 200);  // derived: from the hole on the bow
}

BOOST_AUTO_TEST_CASE(no_hole_stands_in_a_tight_bend_but_one_that_is_asked_for) {
  Joint joint = circle_joint(400, 61, {});
  joint.layout.radius_min = Length::mm(500);
  joint.places.push_back({SideChoice::Both, Length::mm(600), false, "strap"});
  const auto layout = layout_of(joint);
  BOOST_TEST_REQUIRE(layout.has_value());
  BOOST_TEST(layout->count == 2u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "joint/layout.h"
#include "joint/stepped_limits.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

namespace tt = boost::test_tools;

/// A box 4000 by 2000 whose drill line stands 8 mm outside the sheer: half bow 1008,
/// sides 4016, transom 2016.
Joint example() { return box_joint(4000, 2000, {}); }

PitchLimit screws(double from_mm, double to_mm, double greatest_mm) {
  return {Length::mm(from_mm), Length::mm(to_mm), Length::mm(greatest_mm),
          "what the screws carry alone"};
}

Layout layout_of(const Joint& joint, const PitchLimits& limits) {
  const auto result = layout(joint, perimeter_of(joint), limits);
  BOOST_TEST_REQUIRE(result.has_value());
  return *result;
}

const LayoutSide& side_of(const Layout& layout, SideName name) {
  for (const LayoutSide& side : layout.sides)
    if (side.name == name) return side;
  BOOST_FAIL("no such side");
  return layout.sides.front();
}

double girth(const LayoutSide& side, std::size_t hole) {
  return side.girths.at(hole).in_mm();
}

BOOST_AUTO_TEST_SUITE(layout_limits)

BOOST_AUTO_TEST_CASE(limits_equal_to_the_common_one_change_nothing) {
  const Layout before = layout_of(example(), {});
  const PitchLimits limits{
      {SideName::Starboard, {screws(0, 2000, 150), screws(2000, 5024, 150)}},
      {SideName::Port, {screws(0, 9000, 400)}}};
  const Layout after = layout_of(example(), limits);
  BOOST_TEST(after.count == before.count);
  for (std::size_t i = 0; i < before.sides.size(); ++i) {
    BOOST_TEST((after.sides[i].girths == before.sides[i].girths));
    BOOST_TEST(after.sides[i].because == before.sides[i].because);
    BOOST_TEST(after.sides[i].runs.size() == before.sides[i].runs.size());
  }
  BOOST_TEST(after.checks[0].what == before.checks[0].what);
  BOOST_TEST(after.checks[0].source == before.checks[0].source);
}

BOOST_AUTO_TEST_CASE(limits_stand_in_place_of_a_pitch_max_that_is_not_given) {
  const Layout before = layout_of(example(), {});
  Joint joint = example();
  joint.layout.pitch_max = unlimited_pitch;
  const Layout after = layout_of(joint, {{SideName::Starboard, {screws(0, 6000, 150)}},
                                         {SideName::Port, {screws(0, 6000, 150)}},
                                         {SideName::Transom, {screws(0, 6000, 150)}}});
  for (std::size_t i = 0; i < before.sides.size(); ++i) {
    BOOST_TEST_REQUIRE(after.sides[i].girths.size() == before.sides[i].girths.size());
    for (std::size_t hole = 0; hole < before.sides[i].girths.size(); ++hole)
      BOOST_TEST(std::abs(girth(after.sides[i], hole) - girth(before.sides[i], hole)) <
                 1e-6);  // property; the accuracy is 1e-9 of a space
  }
  BOOST_TEST(after.checks[0].id == "layout.pitch_max");
  BOOST_TEST(after.checks[0].what ==
             "space nearest to the most its place allows, by what the screws carry "
             "alone");
  BOOST_TEST(*after.checks[0].limit == 150);
  BOOST_TEST(after.checks[0].source == "what the screws carry alone");
}

BOOST_AUTO_TEST_CASE(a_short_tight_stretch_draws_holes_together_only_there) {
  // derived: four spaces of 50 just cover 3000 to 3200; forward of it 3000 - 1083 in 13
  // spaces (12 would be 159.8), aft 4949 - 3200 in 12 (11: 159). A fifth tight space
  // gives 50 mm away, and neither side needs one space less for that
  const Layout layout =
      layout_of(example(), {{SideName::Starboard, {screws(3000, 3200, 50)}}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.girths.size() == 7u + 30);
  for (std::size_t space = 0; space < 29; ++space) {
    const double length = space < 13 ? 1917. / 13 : space < 17 ? 50 : 1749. / 12;
    BOOST_TEST(girth(starboard, 8 + space) - girth(starboard, 7 + space) == length,
               tt::tolerance(1e-9));
  }
  const Layout without = layout_of(example(), {});
  BOOST_TEST((side_of(layout, SideName::Port).girths ==
              side_of(without, SideName::Port).girths));
  BOOST_TEST(starboard.because[20] ==
             "where the 50 mm allowed by what the screws carry alone begin");
  BOOST_TEST(starboard.because[21] ==
             "equal space 1 of 4 between the step of the greatest space at girth 3000 "
             "mm and the step of the greatest space at girth 3200 mm, the most allowed "
             "by what the screws carry alone");
}

BOOST_AUTO_TEST_CASE(a_limit_may_step_inside_a_run) {
  // derived: 100 on 1083 to 2083 takes ten spaces of just that; aft of it 2866 in 20
  // (19: 150.8). Eleven and nineteen are as many, with 145.6 at the least
  const Layout layout =
      layout_of(example(), {{SideName::Starboard, {screws(1008, 2083, 100)}}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.girths.size() == 7u + 31);
  BOOST_TEST(girth(starboard, 17) == 2083, tt::tolerance(1e-9));
  BOOST_TEST(girth(starboard, 18) - girth(starboard, 17) == 143.3, tt::tolerance(1e-9));
  bool breaks = false;
  for (const LayoutRun& run : starboard.runs)
    breaks = breaks || std::abs(run.to.in_mm() - 2083) < 1e-6;
  BOOST_TEST(breaks);
}

BOOST_AUTO_TEST_CASE(limits_zones_and_common_limits_hold_together) {
  // the zone lets spaces be 200 and the limit 180 on part of it, 120 on another
  Joint joint = example();
  joint.zones.push_back({{SideChoice::Starboard, Length::mm(2000), Length::mm(3000)},
                         Length::mm(200),
                         std::nullopt,
                         "midship"});
  const Layout layout = layout_of(
      joint,
      {{SideName::Starboard, {screws(1800, 2400, 180), screws(2800, 3300, 120)}}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  for (std::size_t hole = 8; hole < starboard.girths.size(); ++hole) {
    const double from = girth(starboard, hole - 1) + 1e-6;
    const double to = girth(starboard, hole) - 1e-6;
    double most = from < 2000 || to > 3000 ? 150 : 200;  // property: the definition
    if (from < 2400 && to > 1800) most = std::min(most, 180.);
    if (from < 3300 && to > 2800) most = std::min(most, 120.);
    BOOST_TEST(to - from < most);
  }
}

BOOST_AUTO_TEST_CASE(symmetric_limits_give_a_symmetric_layout) {
  const std::string rule = "the class rule";
  const auto vee = stepped_limits({{Length::mm(0), Length::mm(140), rule},
                                   {Length::mm(1008), Length::mm(60), rule},
                                   {Length::mm(2016), Length::mm(140), rule}});
  const auto hand = stepped_limits({{Length::mm(0), Length::mm(60), rule},
                                    {Length::mm(2500), Length::mm(140), rule},
                                    {Length::mm(5024), Length::mm(75), rule}});
  const Layout layout = layout_of(
      example(),
      {{SideName::Starboard, hand}, {SideName::Port, hand}, {SideName::Transom, vee}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  const LayoutSide& port = side_of(layout, SideName::Port);
  BOOST_TEST((starboard.girths == port.girths));  // property: the same input
  const LayoutSide& transom = side_of(layout, SideName::Transom);
  const std::size_t last = transom.girths.size() - 1;
  for (std::size_t hole = 0; hole <= last; ++hole)  // property: symmetry, 1e-9 of 60
    BOOST_TEST(std::abs(girth(transom, hole) + girth(transom, last - hole) - 2016) <
               1e-6);
}

BOOST_AUTO_TEST_CASE(a_limit_below_pitch_min_gives_way_to_it_and_fails) {
  // derived: 200 = five spaces of pitch_min
  const Layout layout = layout_of(
      example(),
      {{SideName::Starboard, {screws(3000, 3100, 30), screws(3100, 3200, 25)}}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  std::size_t at_least = 0;
  for (std::size_t hole = 1; hole < starboard.girths.size(); ++hole)
    if (std::abs(girth(starboard, hole) - girth(starboard, hole - 1) - 40) < 1e-6)
      ++at_least;
  BOOST_TEST(at_least == 5u);
  BOOST_TEST_REQUIRE(layout.checks.size() == 3u);
  const Check& check = layout.checks[0];
  BOOST_TEST(check.id == "layout.limit_below_pitch_min");
  BOOST_TEST(check.what ==
             "pitch_min on starboard, girth 3000 to 3200 mm, against the most allowed "
             "by what the screws carry alone");
  BOOST_TEST(check.value == 40);
  BOOST_TEST(*check.limit == 25);
  BOOST_TEST((check.state == CheckState::Fail));
  BOOST_TEST(starboard.bridged.empty());
}

BOOST_AUTO_TEST_CASE(a_bridge_says_whose_limit_is_not_kept) {
  Joint joint = example();
  joint.keepouts.push_back(
      {{SideChoice::Starboard, Length::mm(3000), Length::mm(3060), false},
       Length::mm(25),
       "fuel fill"});
  const Layout layout =
      layout_of(joint, {{SideName::Starboard, {screws(2900, 3200, 100)}}});
  const LayoutSide& starboard = side_of(layout, SideName::Starboard);
  BOOST_TEST_REQUIRE(starboard.bridged.size() == 1u);
  BOOST_TEST(starboard.bridged[0].what ==
             "the fuel fill, past the most allowed by what the screws carry alone");
  BOOST_TEST(starboard.bridged[0].pitch.in_mm() == 110);
  BOOST_TEST(starboard.bridged[0].limit.in_mm() == 100);
}

BOOST_AUTO_TEST_CASE(limits_that_are_none_are_refused) {
  const auto refused = [](const PitchLimits& limits) {
    const Joint joint = circle_joint(1000, 61, {});
    const auto result = layout(joint, perimeter_of(joint), limits);
    return result ? Error() : result.error().front();
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  BOOST_TEST(refused({{SideName::Transom, {}}}).message ==
             "this joint has no transom side: limits of the sides it has");
  BOOST_TEST(refused({{SideName::Port, {screws(0, 1, 9), screws(0, nan, 9)}}}).where ==
             "pitch_limits[0].limits[1]");
  BOOST_TEST(refused({{SideName::Port, {screws(0, 1, -9)}}}).message ==
             "a greatest space of -9 mm cannot be kept: a finite length, 0 or more");
  BOOST_TEST(refused({{SideName::Port, {screws(2, 1, 9)}}}).message ==
             "from 2 to 1 mm is no stretch: finite girths, in order");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/hole_spaces.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(hole_spaces_of_a_side)

BOOST_AUTO_TEST_CASE(a_space_is_over_or_under_only_beyond_rounding) {
  const auto space = [](double mm) {
    HoleSpace made;
    made.space = Length::mm(mm);
    made.least = Length::mm(40);
    made.greatest = Length::mm(150);
    return made;
  };
  BOOST_TEST(!space(150 + 1e-9).over());
  BOOST_TEST(space(150.01).over());
  BOOST_TEST(!space(40 - 1e-9).under());
  BOOST_TEST(space(39.99).under());
}

DrillStation station(const char* mark, SideName side, double girth_mm) {
  DrillStation made;
  made.mark = mark;
  made.side = side;
  made.girth = Length::mm(girth_mm);
  return made;
}

PerimeterSide side(SideName name) {
  PerimeterSide made;
  made.name = name;
  made.drill_line_length = Length::mm(1000);
  made.end = SideEnd::Corner;
  return made;
}

/// A side of 1000 mm from the bow centreline to a corner; spaces 40 to 150 mm, but 40
/// to 100 on the first 300; 30 to 75 mm from the corner.
LayoutStretch stretch() {
  LayoutStretch made;
  made.start_name = "the bow centreline";
  made.end_name = "the transom corner";
  SpacingProblem& problem = made.problem;
  problem.to_mm = 1000;
  problem.start.mirrored = true;
  problem.end = {false, 30, 75};
  problem.limits = {40, 150};
  problem.zones = {{0, 300, {40, 100}}};
  return made;
}

struct Example {
  Perimeter perimeter;
  std::vector<DrillStation> stations;
};

Example example(double first_port_mm) {
  Example made;
  made.perimeter.sides = {side(SideName::Starboard), side(SideName::Port)};
  made.stations = {station("S01", SideName::Starboard, 45),
                   station("S02", SideName::Starboard, 290),
                   station("S03", SideName::Starboard, 940),
                   station("P01", SideName::Port, first_port_mm)};
  return made;
}

HoleSpaces spaces(const Example& of, std::size_t hole) {
  return hole_spaces(of.perimeter, of.stations, hole, stretch());
}

BOOST_AUTO_TEST_CASE(across_the_centreline_stands_the_other_hands_first_hole) {
  const HoleSpace before = spaces(example(50), 0).before;
  BOOST_TEST(before.to == "P01");
  BOOST_TEST(before.space.in_mm() == 95);      // derived: 45 + 50
  BOOST_TEST(before.greatest.in_mm() == 100);  // of the zone
}

BOOST_AUTO_TEST_CASE(a_hole_on_the_centreline_is_the_other_hands_neighbour) {
  Example made = example(0);
  BOOST_TEST(spaces(made, 0).before.space.in_mm() == 45);  // derived: 45 + 0
  made.stations[0].girth = Length();
  made.stations[3].girth = Length::mm(80);
  const HoleSpace before = spaces(made, 0).before;
  BOOST_TEST(before.space.in_mm() == 80);
  BOOST_TEST(before.greatest.in_mm() == 100);
}

BOOST_AUTO_TEST_CASE(without_a_hole_across_the_image_of_its_own_stands_there) {
  Example made = example(50);
  made.stations.pop_back();
  const HoleSpace before = spaces(made, 0).before;
  BOOST_TEST(before.to == "its own mirror image");
  BOOST_TEST(before.space.in_mm() == 90);  // derived: 2 x 45
}

BOOST_AUTO_TEST_CASE(a_space_keeps_the_limits_of_the_ground_it_covers) {
  const HoleSpaces of_second = spaces(example(50), 1);
  BOOST_TEST(of_second.before.to == "S01");
  BOOST_TEST(of_second.before.space.in_mm() == 245);
  BOOST_TEST(of_second.before.greatest.in_mm() == 100);  // all in the zone
  BOOST_TEST(of_second.after.greatest.in_mm() == 100);   // begins in it: the tighter
  BOOST_TEST(of_second.after.over());
}

BOOST_AUTO_TEST_CASE(beside_an_end_there_is_an_end_distance) {
  const HoleSpace after = spaces(example(50), 2).after;
  BOOST_TEST(after.to == "the transom corner");
  BOOST_TEST(!after.to_hole);
  BOOST_TEST(after.space.in_mm() == 60);  // derived: 1000 - 940
  BOOST_TEST(after.least.in_mm() == 30);
  BOOST_TEST(after.greatest.in_mm() == 75);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/check_lines.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using Girths = std::map<SideName, std::vector<double>>;

/// The stations and check lines of a joint with holes at the girths given.
struct Lines {
  std::vector<DrillStation> stations;
  std::vector<CheckLine> lines;

  const CheckLine& the(SideName side, const std::string& what) const {
    const auto found =
        std::find_if(lines.begin(), lines.end(), [&](const CheckLine& line) {
          return line.side == side && line.what.starts_with(what);
        });
    BOOST_TEST_REQUIRE((found != lines.end()), what);
    return *found;
  }
  std::vector<CheckLine> all(SideName side, const std::string& what) const {
    std::vector<CheckLine> some;
    for (const CheckLine& line : lines)
      if (line.side == side && line.what.starts_with(what)) some.push_back(line);
    return some;
  }
};

Lines lines_of(const Joint& joint, const Girths& girths) {
  const Perimeter perimeter = perimeter_of(joint);
  const auto spec = fastener(joint.fastener);
  BOOST_TEST_REQUIRE(spec.has_value());
  auto stations = drill_stations(joint, perimeter, layout_at(girths), *spec);
  BOOST_TEST_REQUIRE(stations.has_value());
  const auto jigs = jig_segments(perimeter, *stations,
                                 {joint.jig.length_max, joint.layout.radius_min});
  return {*stations, check_lines(perimeter, *stations, jigs)};
}

BOOST_AUTO_TEST_SUITE(check_lines_suite)

BOOST_AUTO_TEST_CASE(the_pitches_and_the_closing_space_make_the_side) {
  // property: closure within 1e-6 mm, on a curve
  const auto made = lines_of(
      circle_joint(800, 25, {}),
      {{SideName::Starboard, {71.3, 190.01, 333, 1200, 2500}}, {SideName::Port, {10}}});
  for (const SideName side : {SideName::Starboard, SideName::Port}) {
    Length sum;
    for (const DrillStation& station : made.stations)
      if (station.side == side) sum += station.pitch;
    sum += made.the(side, "closing space").value;
    BOOST_TEST(std::abs((sum - made.the(side, "length of the side").value).in_mm()) <
               1e-6);
  }
  BOOST_TEST(made.the(SideName::Starboard, "closing space").from == "S05");
  BOOST_TEST(made.the(SideName::Starboard, "closing space").to == "centreline aft");
}

BOOST_AUTO_TEST_CASE(the_length_of_a_box_side_is_that_of_its_drill_line) {
  // derived: half the bow and one side, each 8 outside the hull: 508 + 2016
  const auto made = lines_of(box_joint(2000, 1000, {}), {});
  const CheckLine& length = made.the(SideName::Starboard, "length of the side");
  BOOST_TEST(length.value.in_mm() == 2524, tolerance(1e-12));
  BOOST_TEST(length.from == "bow datum");
  BOOST_TEST(length.to == "starboard transom corner");
}

BOOST_AUTO_TEST_CASE(a_side_is_named_by_where_it_ends) {
  const auto end_of = [](const Joint& joint) {
    return lines_of(joint, {}).the(SideName::Port, "length of the side").to;
  };
  BOOST_TEST(end_of(circle_joint(800, 25, {})) == "centreline aft");
  Joint open_box = box_joint(2000, 1000, {});
  open_box.sheer.closed = false;  // no joint along the transom
  BOOST_TEST(end_of(open_box) == "port transom corner");
  Joint open_end = open_box;
  open_end.sheer.rows.pop_back();
  BOOST_TEST(end_of(open_end) == "after end of the joint");
}

BOOST_AUTO_TEST_CASE(every_fifth_hole_has_its_running_dimension) {
  std::vector<double> girths;
  for (int i = 0; i < 12; ++i) girths.push_back(600 + 100 * i);
  const auto made =
      lines_of(box_joint(2000, 1000, {}), {{SideName::Starboard, girths}});
  const auto running = made.all(SideName::Starboard, "running dimension");
  BOOST_TEST_REQUIRE(running.size() == 2u);
  BOOST_TEST(running[1].to == "S10");
  BOOST_TEST(running[1].value.in_mm() == 1500);
  // derived: straight along a straight side five pitches are 500
  const auto straight = made.all(SideName::Starboard, "five pitches");
  BOOST_TEST_REQUIRE(straight.size() == 1u);
  BOOST_TEST(straight[0].value.in_mm() == 500, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(five_pitches_do_not_span_a_corner) {
  // derived: the corner is at 508, between the fifth hole and the tenth
  std::vector<double> girths;
  for (int i = 0; i < 15; ++i) girths.push_back(50 + 100 * i);
  const auto made =
      lines_of(box_joint(2000, 1000, {}), {{SideName::Starboard, girths}});
  const auto straight = made.all(SideName::Starboard, "five pitches");
  BOOST_TEST_REQUIRE(straight.size() == 1u);
  BOOST_TEST(straight[0].from == "S10");
  BOOST_TEST(straight[0].to == "S15");
}

BOOST_AUTO_TEST_CASE(the_closing_space_counts_the_start_apart_from_the_pitches) {
  const auto closing = [](const std::vector<double>& girths) {
    return lines_of(box_joint(2000, 1000, {}), {{SideName::Starboard, girths}})
        .the(SideName::Starboard, "closing space")
        .what;
  };
  // derived: between n holes are n - 1 pitches
  BOOST_TEST(closing({600, 700, 800}) == "closing space after 2 pitches and the start");
  BOOST_TEST(closing({600, 700}) == "closing space after 1 pitch and the start");
}

BOOST_AUTO_TEST_CASE(the_outer_holes_are_given_from_each_corner) {
  // derived: corners at 0, 508 (inside the side) and 2524
  const auto made = lines_of(box_joint(2000, 1000, {}),
                             {{SideName::Starboard, {60, 468, 558, 1500, 2480}}});
  const auto first = made.all(SideName::Starboard, "first hole of a stretch");
  const auto last = made.all(SideName::Starboard, "last hole of a stretch");
  BOOST_TEST_REQUIRE(first.size() == 2u);
  BOOST_TEST_REQUIRE(last.size() == 2u);
  BOOST_TEST(first[0].value.in_mm() == 60, tolerance(1e-12));
  BOOST_TEST(last[0].value.in_mm() == 40, tolerance(1e-12));
  BOOST_TEST(first[1].value.in_mm() == 50, tolerance(1e-12));
  BOOST_TEST(last[1].value.in_mm() == 44, tolerance(1e-12));
  BOOST_TEST(last[1].from == "S05");
}

BOOST_AUTO_TEST_CASE(the_ends_of_an_opening_count_as_corners) {
  Joint joint = circle_joint(800, 25, {});
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(320), Length::mm(580)}, "well"});
  const auto made = lines_of(joint, {{SideName::Starboard, {100, 290, 620, 900}}});
  const auto first = made.all(SideName::Starboard, "first hole of a stretch");
  const auto last = made.all(SideName::Starboard, "last hole of a stretch");
  BOOST_TEST_REQUIRE(first.size() == 2u);
  BOOST_TEST(last[0].value.in_mm() == 30, tolerance(1e-12));
  BOOST_TEST(last[0].to == "well");
  BOOST_TEST(first[1].value.in_mm() == 40, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_diagonals_of_a_symmetric_boat_are_equal) {
  // property: mirror images; holes of one side only do not spoil the pair
  const auto made = lines_of(box_joint(2000, 1000, {}),
                             {{SideName::Starboard, {600, 700, 900, 1500, 2000, 2400}},
                              {SideName::Port, {600, 900, 1444, 2000, 2400}}});
  const CheckLine& one = made.the(SideName::Starboard, "diagonal");
  const CheckLine& other = made.the(SideName::Port, "diagonal");
  BOOST_TEST(one.value.in_mm() == other.value.in_mm(), tolerance(1e-12));
  BOOST_TEST(one.from == "S03");
  BOOST_TEST(one.to == "P05");
  BOOST_TEST(other.from == "P02");
  BOOST_TEST(other.to == "S06");
  // derived: 900 and 2400 on the sides, 1500 apart along and 1016 across
  BOOST_TEST(one.value.in_mm() == std::hypot(1500, 1016), tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(both_transom_corners_are_as_far_from_the_bow_datum) {
  const auto made = lines_of(box_joint(2000, 1000, {}), {});
  const Length starboard = made.the(SideName::Starboard, "end to end").value;
  // derived: from (-8, 0) to (2008, 508)
  BOOST_TEST(starboard.in_mm() == std::hypot(2016, 508), tolerance(1e-12));
  BOOST_TEST(starboard.in_mm() == made.the(SideName::Port, "end to end").value.in_mm(),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_jig_on_a_circle_has_the_chord_and_rise_of_its_arc) {
  // derived: 600 of girth at radius 808; the spline is within 1e-6 of the circle
  const auto made =
      lines_of(circle_joint(800, 61, {}), {{SideName::Starboard, {700, 1000, 1300}}});
  const double half = 600. / 808 / 2;
  BOOST_TEST(made.the(SideName::Starboard, "J-S1, end to end").value.in_mm() ==
                 2 * 808 * std::sin(half),
             tolerance(1e-6));
  BOOST_TEST(made.the(SideName::Starboard, "J-S1, greatest offset").value.in_mm() ==
                 808 * (1 - std::cos(half)),
             tolerance(1e-4));  // small against the circle
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

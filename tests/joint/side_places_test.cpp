#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Stretch by_girth(double from, double to) {
  return {SideChoice::Starboard, Length::mm(from), Length::mm(to), false};
}

Stretch by_x(double from, double to) {
  return {SideChoice::Starboard, Length::mm(from), Length::mm(to), true};
}

Joint with_opening(Joint joint, const Stretch& stretch) {
  joint.openings.push_back({stretch, "outboard well"});
  return joint;
}

Error only_error(const Errors& errors) {
  BOOST_TEST_REQUIRE(errors.size() == 1u);
  return errors.front();
}

double joint_girth(const PerimeterSide& side) {
  double girth = 0;
  for (const SpanPart& part : side.parts)
    girth += side.sheer.line().length_mm(part.span, part.from_u, part.to_u);
  return girth;
}

BOOST_AUTO_TEST_SUITE(side_places)

BOOST_AUTO_TEST_CASE(a_stretch_by_x_is_found_on_the_drill_line) {
  // derived: a box's side runs aft at x = girth - 516; also at the very x of a row, at
  // many places, so that rounding cannot lose it between two spans
  std::vector<Point3> points{{0, 0, 0}, {0, 500, 0}};
  for (int i = 1; i < 60; ++i) points.emplace_back(i * 33.3, 500, 0);
  points.emplace_back(2000, 500, 0);
  points.emplace_back(2000, 0, 0);
  for (const CurveKind kind : {CurveKind::Chords, CurveKind::Spline}) {
    Joint joint = example_joint(points, {});
    joint.sheer.curve = kind;
    const Perimeter box = perimeter_of(joint);
    for (const PerimeterSide& side : {box.sides[0], box.sides[1]})
      for (int i = 1; i < 60; ++i)
        for (const double x :
             {std::nextafter(i * 33.3, 0.), i * 33.3, std::nextafter(i * 33.3, 1e9)}) {
          const auto girths =
              stretch_on(side, by_x(x, 1990), "opening[0]", "the thing");
          BOOST_TEST_REQUIRE(girths.has_value());
          BOOST_TEST(girths->first.in_mm() == 508 + 8 + x, tolerance(1e-9));
          BOOST_TEST(girths->second.in_mm() == 508 + 8 + 1990, tolerance(1e-9));
        }
  }
}

BOOST_AUTO_TEST_CASE(a_stretch_given_back_to_front_is_turned) {
  const Perimeter box = perimeter_of(box_joint(2000, 1000, {}));
  const auto girths =
      stretch_on(box.sides[0], by_girth(900, 600), "zone[0]", "the thing").value();
  BOOST_TEST(girths.first.in_mm() == 600);
  BOOST_TEST(girths.second.in_mm() == 900);
}

BOOST_AUTO_TEST_CASE(places_off_their_side_are_said_word_for_word) {
  const Perimeter box = perimeter_of(box_joint(2000, 1000, {}));
  const PerimeterSide& side = box.sides[0];
  const auto off = stretch_on(side, by_girth(-5, 2600), "opening[0]", "the thing");
  BOOST_TEST_REQUIRE(!off.has_value());
  BOOST_TEST_REQUIRE(off.error().size() == 2u);
  BOOST_TEST(off.error()[0].where == "opening[0].from");
  BOOST_TEST(
      off.error()[0].message ==
      "the thing: -5.0 mm is off the end of the starboard drill line: 0 to 2524.0 mm");
  BOOST_TEST(off.error()[1].where == "opening[0].to");
  const Error nowhere =
      only_error(stretch_on(side, by_x(500, 3000), "keepout[1]", "the thing").error());
  BOOST_TEST(nowhere.where == "keepout[1].x_to");
  BOOST_TEST(nowhere.message ==
             "the thing: x = 3000.0 mm is met nowhere on the starboard drill line: "
             "give the running "
             "girth in its place, 0 to 2524.0 mm");
  const FixedPlace twice{SideChoice::Transom, Length::mm(2008), true, "strap"};
  const Error all_along =
      only_error(place_on(*box.side(SideName::Transom), twice, "place[0]").error());
  BOOST_TEST(all_along.where == "place[0].x");
  BOOST_TEST(all_along.message ==
             "place strap: x = 2008.0 mm is met more than once on the transom drill "
             "line: give the "
             "running girth in its place, 0 to 1016.0 mm");
}

BOOST_AUTO_TEST_CASE(an_opening_takes_its_stretch_out_of_the_joint) {
  // derived: on a box the drill line's girth less 508 + 8 is x, the sheer's less 500
  const Perimeter box =
      perimeter_of(with_opening(box_joint(2000, 1000, {}), by_x(600, 1440)));
  const PerimeterSide& side = *box.side(SideName::Starboard);
  BOOST_TEST_REQUIRE(side.openings.size() == 1u);
  BOOST_TEST(side.openings[0].from.in_mm() == 1116, tolerance(1e-12));
  BOOST_TEST(side.openings[0].to.in_mm() == 1956, tolerance(1e-12));
  BOOST_TEST(side.openings[0].sheer_from.in_mm() == 1100, tolerance(1e-12));
  BOOST_TEST(side.openings[0].sheer_to.in_mm() == 1940, tolerance(1e-12));
  BOOST_TEST(joint_girth(side) == 2500 - 840, tolerance(1e-12));
  BOOST_TEST(joint_girth(*box.side(SideName::Port)) == 2500, tolerance(1e-12));
  BOOST_TEST(box.mitres.size() == 4u);
}

BOOST_AUTO_TEST_CASE(openings_run_back_to_back_and_to_the_ends) {
  Joint joint = with_opening(example_joint(small_boat(), {}), by_girth(0, 700));
  joint.openings.push_back({by_girth(700, 1100), "another"});
  joint.openings[1].stretch.side = SideChoice::Both;
  const Perimeter boat = perimeter_of(joint);
  const PerimeterSide& side = *boat.side(SideName::Starboard);
  BOOST_TEST(
      joint_girth(side) == (side.sheer_length - side.openings[1].sheer_to).in_mm(),
      tolerance(1e-12));
  BOOST_TEST(boat.side(SideName::Port)->openings.size() == 1u);
  BOOST_TEST(boat.mitres.size() == 2u);  // not the stem: no joint to starboard of it
}

BOOST_AUTO_TEST_CASE(an_open_transom_leaves_no_mitre_at_its_corners) {
  // derived: mitres only with joint on both sides; bow corners 2, transom corners 2
  Joint joint = box_joint(2000, 1000, {});
  const double length = 1016;
  for (const double from : {0., 300.}) {
    Joint open = joint;
    open.openings.push_back(
        {{SideChoice::Transom, Length::mm(from), Length::mm(length), false}, "well"});
    const Perimeter box = perimeter_of(open);
    BOOST_TEST(box.mitres.size() == (from == 0 ? 2u : 3u));
    BOOST_TEST(std::abs(joint_girth(*box.side(SideName::Transom)) -
                        (from == 0 ? 0 : 300 - 8)) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(openings_that_cannot_be_are_said_word_for_word) {
  Joint round = circle_joint(900, 30, {});
  round.openings.push_back(
      {{SideChoice::Transom, Length::mm(10), Length::mm(20), false}, "well"});
  const Error no_transom = only_error(perimeter(round).error());
  BOOST_TEST(no_transom.where == "opening[0].side");
  BOOST_TEST(no_transom.message ==
             "this joint has no transom side: name starboard, port or both");
  Joint twice = with_opening(box_joint(2000, 1000, {}), by_girth(600, 900));
  twice.openings.push_back({by_girth(800, 1000), "hawse"});
  const Error overlap = only_error(perimeter(twice).error());
  BOOST_TEST(overlap.where == "opening");
  BOOST_TEST(
      overlap.message ==
      "the openings outboard well and hawse overlap on starboard: make them one");
  const Error off = only_error(
      perimeter(with_opening(box_joint(2000, 1000, {}), by_girth(600, 3000))).error());
  BOOST_TEST(off.where == "opening[0].to");
  BOOST_TEST(off.message ==
             "opening outboard well: 3000.0 mm is off the end of the starboard drill "
             "line: 0 to 2524.0 mm");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

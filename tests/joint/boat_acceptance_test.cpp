#include "joint/boat_acceptance.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_readings.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box of a joint whose long starboard side was read as drawn, 3 mm, at its ends and
/// between them as a test has it.
struct ReadSide {
  ReadSide() : joint(box_joint(4000, 2000, {})) {}

  Boat boat(double girth, double top, double low) const {
    return of({girth_reading(SideName::Starboard, 0, 3, 3),
               girth_reading(SideName::Starboard, girth - 500, 3, 3),
               girth_reading(SideName::Starboard, girth, top, low),
               girth_reading(SideName::Starboard, girth + 500, 3, 3)});
  }
  Boat of(const std::vector<GivenReading>& readings) const {
    Parts parts;
    parts.schedule = true;
    return *boat_job(joint, parts, readings).boat;
  }
  Joint joint;
};

bool open(const NonConformance& out, Disposition disposition) {
  return std::find(out.open.begin(), out.open.end(), disposition) != out.open.end();
}

BOOST_FIXTURE_TEST_SUITE(boat_acceptance, ReadSide)

BOOST_AUTO_TEST_CASE(a_boat_inside_its_limits_has_no_non_conformance) {
  BOOST_TEST(boat(2500, 2, 4).out.empty());
}

BOOST_AUTO_TEST_CASE(a_tight_stretch_is_numbered_with_its_marks_and_what_it_lacks) {
  // derived: from 3 to 0.5 over 500 mm: 1 is passed 400 mm along, 2400 and 2600
  const Boat read = boat(2500, 0.5, 0.5);
  BOOST_TEST_REQUIRE(read.out.size() == 1U);
  const NonConformance& out = read.out.front();
  BOOST_TEST(out.number == 1U);
  BOOST_TEST((out.kind == OutKind::Tight));
  BOOST_TEST(out.from.in_mm() == 2400., tolerance(1e-4));
  BOOST_TEST(out.to.in_mm() == 2600., tolerance(1e-4));
  BOOST_TEST(out.value.in_mm() == 0.5, tolerance(1e-3));
  BOOST_TEST(out.limit.in_mm() == 1.);
  BOOST_TEST(!out.marks.empty());
  BOOST_TEST((out.known == Known::Read));
  BOOST_TEST(open(out, Disposition::Grind));
  BOOST_TEST(!open(out, Disposition::BuildUp));
}

BOOST_AUTO_TEST_CASE(what_can_be_undone_is_open_before_what_cannot) {
  // property: to seat the lid again costs nothing, ground laminate does not come back
  joint.reading_limits.step = Length::mm(2);
  std::size_t ground = 0;
  for (const NonConformance& out : boat(2500, 0.5, 9).out) {
    BOOST_TEST_REQUIRE(!out.open.empty());
    BOOST_TEST((out.open.front() == Disposition::SeatAgain));
    BOOST_TEST((out.open.back() == Disposition::Ask));
    if (!open(out, Disposition::Grind)) continue;
    ++ground;
    BOOST_TEST((out.open[out.open.size() - 2] == Disposition::Grind));
  }
  BOOST_TEST(ground > 0U);
}

BOOST_AUTO_TEST_CASE(a_boat_that_is_glued_is_not_seated_ground_or_shimmed) {
  std::vector<GivenReading> readings;
  for (const double girth : {0., 2000., 2500., 3000., 4000.}) {
    const double gap = girth == 2500 ? 0.5 : girth == 4000 ? 13 : 3;
    readings.push_back(girth_reading(SideName::Starboard, girth, gap, gap));
    readings.back().state = ReadingState::After;
  }
  const Boat read = of(readings);
  BOOST_TEST_REQUIRE(read.out.size() >= 2U);
  for (const NonConformance& out : read.out)
    for (const Disposition one : out.open)
      BOOST_TEST((one == Disposition::Ask || one == Disposition::ReadAgain));
}

BOOST_AUTO_TEST_CASE(at_each_hole_to_grind_is_what_the_gap_lacks) {
  // property: gap and what is taken off make the least gap, inside it nothing is
  for (const PlaceGap& place : boat(2500, 0.5, 9).places)
    for (const EdgeGap& edge : {place.top, place.low}) {
      const double gap = edge.gap.in_mm();
      BOOST_TEST(edge.grind.in_mm() == std::max(0., 1 - gap), tolerance(1e-12));
      BOOST_TEST(edge.build_up.in_mm() == std::max(0., gap - 8), tolerance(1e-12));
    }
}

BOOST_AUTO_TEST_CASE(a_gap_that_equals_its_limit_to_rounding_is_inside) {
  // property: a gauge is read to 0.01 mm, so that 0.0001 is not told from none
  for (const double away : {0., 5e-5, -5e-5}) {
    BOOST_TEST(boat(2500, 1 + away, 8 + away).out.empty());
    for (const PlaceGap& place : boat(2500, 1 + away, 8 + away).places)
      for (const EdgeGap& edge : {place.top, place.low})
        BOOST_TEST((edge.grind == Length() && edge.build_up == Length()));
  }
  BOOST_TEST(boat(2500, 1 - 1e-3, 8 + 1e-3).out.size() == 2U);
}

BOOST_AUTO_TEST_CASE(neighbours_are_held_against_the_step_only_if_one_is_given) {
  BOOST_TEST(boat(2500, 3, 5.5).out.empty());
  joint.reading_limits.step = Length::mm(2);
  const Boat read = boat(2500, 3, 5.5);
  // derived: 2.5 from one to the next, twice, at the low edge
  BOOST_TEST_REQUIRE(read.out.size() == 2U);
  for (const NonConformance& out : read.out) {
    BOOST_TEST((out.kind == OutKind::Step));
    BOOST_TEST(out.value.in_mm() == 2.5, tolerance(1e-12));
    BOOST_TEST(out.depth.in_mm() == 50.);
    BOOST_TEST(open(out, Disposition::ReadAgain));
  }
  BOOST_TEST(read.out[0].from.in_mm() == 2000.);
  BOOST_TEST(read.out[0].to.in_mm() == 2500.);
  joint.reading_limits.step = Length::mm(2.5);
  BOOST_TEST(boat(2500, 3, 5.5).out.empty());
}

BOOST_AUTO_TEST_CASE(the_joints_own_limits_go_before_the_adhesives) {
  joint.reading_limits.gap_max = Length::mm(5);
  const Boat read = boat(2500, 3, 5.5);
  BOOST_TEST_REQUIRE(read.out.size() == 1U);
  BOOST_TEST((read.out[0].kind == OutKind::Wide));
  BOOST_TEST(read.out[0].limit.in_mm() == 5.);
  BOOST_TEST(read.limits.max_address == "readings.gap_max");
  BOOST_TEST(read.limits.min_address == "adhesive.gap_min");
}

BOOST_AUTO_TEST_CASE(a_hole_that_no_fastener_serves_is_out_with_the_length_it_needs) {
  // derived: lip 5, hull 6, gap g: 25 mm serve a stack of 25 less the screw's point; at
  // 12 the stack is 23
  joint.adhesive->gap_max = Length::mm(20);
  const Boat read = boat(2500, 12, 12);
  BOOST_TEST_REQUIRE(read.out.size() == 1U);
  const NonConformance& out = read.out.front();
  BOOST_TEST((out.kind == OutKind::NoFastener));
  BOOST_TEST(out.limit.in_mm() == 25.);
  BOOST_TEST(out.value.in_mm() > 25.);
  BOOST_TEST(open(out, Disposition::LongerFastener));
  for (const PlaceGap& place : read.places)
    if (place.fastener && !place.fastener->length)
      BOOST_TEST((out.from <= place.girth && place.girth <= out.to));
}

BOOST_AUTO_TEST_CASE(a_stretch_that_was_not_read_says_so) {
  const Boat read = of({girth_reading(SideName::Starboard, 2500, 0.5, 0.5)});
  BOOST_TEST_REQUIRE(!read.out.empty());
  BOOST_TEST((known_at(read, SideName::Starboard, Length::mm(2500)) == Known::Read));
  BOOST_TEST((known_at(read, SideName::Starboard, Length::mm(2400)) == Known::Held));
  BOOST_TEST((known_at(read, SideName::Port, Length::mm(2400)) == Known::Unread));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

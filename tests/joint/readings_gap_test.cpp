#include "joint/readings_gap.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

GapReading reading_at(double girth_mm,
                      std::optional<double> top,
                      std::optional<double> low,
                      SideName side = SideName::Starboard) {
  GapReading reading;
  reading.side = side;
  reading.girth = Length::mm(girth_mm);
  if (top) reading.top = Length::mm(*top);
  if (low) reading.low = Length::mm(*low);
  return reading;
}

/// A round boat whose drawn gap is 3 at the top and 5 at the foot of a lap of 50.
struct RoundBoat {
  RoundBoat() {
    ExampleFaces faces;
    faces.lip_low = 5;
    perimeter = perimeter_of(circle_joint(2000, 48, faces));
  }
  double gap(const ReadingsGap& field, double girth, double depth) const {
    return field.gap(SideName::Starboard, Length::mm(girth), Length::mm(depth)).in_mm();
  }
  Perimeter perimeter;
};

BOOST_FIXTURE_TEST_SUITE(readings_gap, RoundBoat)

BOOST_AUTO_TEST_CASE(without_readings_the_gap_is_the_drawn_one) {
  const ReadingsGap field(perimeter, {}, ReadingState::Dry);
  const GapProfile drawn(perimeter, perimeter.sides[0]);
  for (const double girth : {0., 700., 3100.})
    for (const double depth : {0., 25., 50.}) {
      const Place place = perimeter.sides[0].drill_line.place_at(Length::mm(girth));
      BOOST_TEST(gap(field, girth, depth) == drawn.gap_mm(place, depth),
                 tolerance(1e-12));
    }
  BOOST_TEST(field.held().empty());
  BOOST_TEST(field.unread().size() == perimeter.sides.size());
}

BOOST_AUTO_TEST_CASE(where_it_was_read_the_gap_is_the_reading) {
  // property
  const ReadingsGap field(perimeter,
                          {reading_at(2000, 4.5, 6.25), reading_at(900, 1.5, 3)},
                          ReadingState::Dry);
  BOOST_TEST(gap(field, 900, 0) == 1.5, tolerance(1e-9));
  BOOST_TEST(gap(field, 900, 50) == 3.0, tolerance(1e-9));
  BOOST_TEST(gap(field, 2000, 0) == 4.5, tolerance(1e-9));
  BOOST_TEST(gap(field, 2000, 50) == 6.25, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(between_readings_the_difference_is_straight_along_and_down) {
  // derived: differences +1 at 1000 and -2 at 1600 at the top, 0 and +3 at the foot; a
  // third of the way 0 and 1, and half way down the lap 0.5
  const ReadingsGap drawn(perimeter, {}, ReadingState::Dry);
  const auto read = [&](double girth, double top, double low) {
    return reading_at(girth, gap(drawn, girth, 0) + top, gap(drawn, girth, 50) + low);
  };
  const ReadingsGap field(perimeter, {read(1000, 1, 0), read(1600, -2, 3)},
                          ReadingState::Dry);
  const auto off = [&](double depth) {
    return gap(field, 1200, depth) - gap(drawn, 1200, depth);
  };
  BOOST_TEST(std::abs(off(0)) < 1e-9);
  BOOST_TEST(off(50) == 1.0, tolerance(1e-9));
  BOOST_TEST(off(25) == 0.5, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(of_one_edge_read_the_difference_stands_for_both) {
  const ReadingsGap drawn(perimeter, {}, ReadingState::Dry);
  const ReadingsGap by_top(perimeter,
                           {reading_at(1000, gap(drawn, 1000, 0) + 0.7, std::nullopt)},
                           ReadingState::Dry);
  const ReadingsGap by_low(perimeter,
                           {reading_at(1000, std::nullopt, gap(drawn, 1000, 50) + 0.7)},
                           ReadingState::Dry);
  for (const ReadingsGap* field : {&by_top, &by_low}) {
    for (const double depth : {0., 25., 50.})
      BOOST_TEST(gap(*field, 1000, depth) - gap(drawn, 1000, depth) == 0.7,
                 tolerance(1e-9));
    BOOST_TEST(field->corrections(SideName::Starboard).front().one_edge);
  }
}

BOOST_AUTO_TEST_CASE(beyond_the_readings_the_difference_is_held_and_listed) {
  const ReadingsGap drawn(perimeter, {}, ReadingState::Dry);
  const ReadingsGap field(perimeter, {reading_at(1000, 4, 6), reading_at(2000, 5, 7)},
                          ReadingState::Dry);
  BOOST_TEST(gap(field, 100, 0) - gap(drawn, 100, 0) == 4 - gap(drawn, 1000, 0),
             tolerance(1e-9));
  BOOST_TEST(gap(field, 2900, 50) - gap(drawn, 2900, 50) == 7 - gap(drawn, 2000, 50),
             tolerance(1e-9));
  const auto held = field.held();
  BOOST_TEST_REQUIRE(held.size() == 2U);
  BOOST_TEST(held[0].to.in_mm() == 1000.0);
  BOOST_TEST(held[1].from.in_mm() == 2000.0);
  BOOST_TEST((held[1].to == perimeter.sides[0].drill_line_length));
  BOOST_TEST_REQUIRE(field.unread().size() == 1U);
  BOOST_TEST((field.unread().front() == SideName::Port));
}

BOOST_AUTO_TEST_CASE(readings_of_another_state_say_nothing) {
  GapReading after = reading_at(1000, 7, 9);
  after.state = ReadingState::After;
  const ReadingsGap field(perimeter, {after, reading_at(1000, 4, 6)},
                          ReadingState::Dry);
  BOOST_TEST(gap(field, 1000, 0) == 4.0, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(two_readings_of_one_place_count_as_their_mean) {
  const ReadingsGap field(perimeter, {reading_at(1000, 4, 6), reading_at(1000, 5, 8)},
                          ReadingState::Dry);
  BOOST_TEST(gap(field, 1000, 0) == 4.5, tolerance(1e-9));
  BOOST_TEST(gap(field, 1000, 50) == 7.0, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_mean_moves_by_what_all_readings_differ) {
  // property: the same difference everywhere on one of two like sides moves the mean of
  // both by half of it
  const ReadingsGap drawn(perimeter, {}, ReadingState::Dry);
  const auto girth = 1500.;
  const ReadingsGap field(perimeter,
                          {reading_at(girth, gap(drawn, girth, 0) + 0.8, std::nullopt)},
                          ReadingState::Dry);
  BOOST_TEST((field.mean() - drawn.mean()).in_mm() == 0.4, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_mean_of_a_drawn_wedge_is_that_of_its_edges) {
  // derived: a lip 3 off at the top and 5 at the foot of an upright hull: 4
  const ReadingsGap drawn(perimeter, {}, ReadingState::Dry);
  BOOST_TEST(drawn.mean().in_mm() == 4.0, tolerance(1e-6));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

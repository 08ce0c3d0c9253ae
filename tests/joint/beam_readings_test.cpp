#include "joint/beam_readings.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

BeamReading reading_at(double x, double mould, double free) {
  BeamReading reading;
  reading.x = Length::mm(x);
  reading.mould = Length::mm(mould);
  reading.free = Length::mm(free);
  return reading;
}

BOOST_AUTO_TEST_SUITE(beam_readings)

BOOST_AUTO_TEST_CASE(each_side_has_moved_by_half_of_what_the_beam_has) {
  // derived: 2418 free and 2401 held against 2400 in the mould: 9 and 0.5 a side, and
  // from free to held 8.5 inward
  const Joint joint = box_joint(4000, 2400, {});
  const auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  BeamReading reading = reading_at(2000, 2400, 2418);
  reading.held = Length::mm(2401);
  const auto shapes = beam_shapes({reading}, joint.sheer, *perimeter);
  BOOST_TEST_REQUIRE(shapes.has_value());
  BOOST_TEST_REQUIRE(shapes->readings.size() == 1u);
  BOOST_TEST(shapes->readings[0].free.in_mm() == 9);
  BOOST_TEST(shapes->readings[0].held->in_mm() == 0.5);
  const PerimeterSide& port = *perimeter->side(SideName::Port);
  const Place place = port.sheer.place_at(Length::mm(1200 + 2000));
  BOOST_TEST(shapes->free.at(port, place).y_mm == -9,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST_REQUIRE(shapes->held.has_value());
  BOOST_TEST(shapes->held->at(port, place).y_mm == 8.5,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_reading_may_name_a_row_by_its_station) {
  Joint joint = box_joint(4000, 2000, {});
  joint.sheer.rows.insert(joint.sheer.rows.begin() + 2, joint.sheer.rows[1]);
  joint.sheer.rows[2].point = {1700, 1000, 0};
  joint.sheer.rows[2].station = "frame 7";
  const auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  BeamReading reading = reading_at(0, 2000, 1990);
  reading.x.reset();
  reading.station = "frame 7";
  const auto shapes = beam_shapes({reading}, joint.sheer, *perimeter);
  BOOST_TEST_REQUIRE(shapes.has_value());
  BOOST_TEST(shapes->readings[0].x.in_mm() == 1700);
  BOOST_TEST(shapes->readings[0].free.in_mm() == -5);

  reading.station = "frame 8";
  const auto none = beam_shapes({reading}, joint.sheer, *perimeter);
  BOOST_TEST_REQUIRE(!none.has_value());
  BOOST_TEST(none.error().front().where == "beam_reading[0].station");
  BOOST_TEST(
      none.error().front().message ==
      "no row of the sheer table has the station \"frame 8\": did you mean frame "
      "7?");
}

BOOST_AUTO_TEST_CASE(two_readings_of_one_place_are_refused) {
  const Joint joint = box_joint(4000, 2000, {});
  const auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  const auto shapes =
      beam_shapes({reading_at(900, 2000, 2004), reading_at(900, 2000, 2006)},
                  joint.sheer, *perimeter);
  BOOST_TEST_REQUIRE(!shapes.has_value());
  BOOST_TEST(shapes.error().front().where == "beam_reading[1].x");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

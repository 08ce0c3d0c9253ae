#include "joint/drill_stations.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using Girths = std::map<SideName, std::vector<double>>;

std::vector<DrillStation> stations_of(const Joint& joint, const Girths& girths) {
  const auto spec = fastener(joint.fastener);
  BOOST_TEST_REQUIRE(spec.has_value());
  const auto stations =
      drill_stations(joint, perimeter_of(joint), layout_at(girths), *spec);
  BOOST_TEST_REQUIRE(stations.has_value());
  return *stations;
}

/// The station at 1500 mm on the long side of a box of 2000 by 1000.
DrillStation on_a_box(const ExampleFaces& faces) {
  return stations_of(box_joint(2000, 1000, faces), {{SideName::Starboard, {1500}}})
      .front();
}

BOOST_AUTO_TEST_SUITE(drill_stations_suite)

BOOST_AUTO_TEST_CASE(upright_faces_make_a_level_bit_and_a_plain_sum_of_thicknesses) {
  // derived: lip 5, gap 3, hull 6; drill line at 25 in a lap of 50; trim 2
  const DrillStation station = on_a_box({});
  BOOST_TEST((station.axis - Vector3(0, -1, 0)).norm() < 1e-12);
  // the drill line starts at x = -8 and reaches y = 508 at its corner
  BOOST_TEST((station.point - Point3(1500 - 508 - 8, 508, -25)).norm() < 1e-9);
  BOOST_TEST(station.stack.in_mm() == 14, tolerance(1e-12));
  BOOST_TEST(station.gap.in_mm() == 3, tolerance(1e-12));
  BOOST_TEST(station.edge_low.in_mm() == 23, tolerance(1e-9));
  BOOST_TEST(station.edge_top.in_mm() == 23, tolerance(1e-9));
  BOOST_TEST(station.drill_depth.in_mm() == 17, tolerance(1e-12));
  // the lip and half the gap
  BOOST_TEST_REQUIRE(station.lip_depth.has_value());
  BOOST_TEST(station.lip_depth->in_mm() == 6.5, tolerance(1e-12));
  // 14 and the point of 4.3 (ISO 1478): 19 from 16, 19, 22, 25
  BOOST_TEST_REQUIRE(station.length.has_value());
  BOOST_TEST(station.length->in_mm() == 19);
}

BOOST_AUTO_TEST_CASE(the_lip_bit_stops_along_its_own_axis_between_lip_and_hull) {
  // derived: hull leaning in 1 in 5, so at 25 deep the gap is 3 + 5 along a level bit
  ExampleFaces faces;
  faces.hull_low = -10;
  BOOST_TEST(on_a_box(faces).lip_depth->in_mm() == 5 + 8. / 2, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(
    where_the_faces_interfere_the_lip_bit_stops_at_the_lips_thickness) {
  ExampleFaces faces;
  faces.lip_top = faces.lip_low = -1;
  BOOST_TEST(on_a_box(faces).lip_depth->in_mm() == 5, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(one_bit_goes_through_all_for_a_bolt) {
  Joint joint = box_joint(2000, 1000, {});
  joint.fastener.kind = FastenerKind::Bolt;
  joint.fastener.size = "M6";
  joint.fastener.lengths.clear();
  const auto stations = stations_of(joint, {{SideName::Starboard, {1500}}});
  BOOST_TEST(!stations.front().lip_depth.has_value());
}

BOOST_AUTO_TEST_CASE(a_hole_without_a_length_or_a_hull_is_not_to_be_drilled) {
  DrillStation station = on_a_box({});
  BOOST_TEST(drillable(station));
  station.length.reset();
  BOOST_TEST(!drillable(station));
  station = on_a_box({});
  station.past_hull = true;
  BOOST_TEST(!drillable(station));
  station = on_a_box({});
  station.edge_top = Length();
  BOOST_TEST(!drillable(station));
}

BOOST_AUTO_TEST_CASE(on_the_hull_the_girth_is_shorter_by_the_corner) {
  // derived: the drill line runs 8 outside the hull before and after the corner
  const DrillStation station = on_a_box({});
  BOOST_TEST(station.hull_girth.in_mm() == 1500 - 16, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_lip_with_draft_tilts_the_bit_and_lengthens_the_stack) {
  // derived: lip face from 2 to 4 mm over the lap of 50, so it leans 1 in 25; its outer
  // face stands 5 secant further out; the bit goes down by the same angle
  ExampleFaces faces;
  faces.lip_top = 2;
  faces.lip_low = 4;
  const DrillStation station = on_a_box(faces);
  const double lean = std::atan(2. / 50);
  const double entry = 3 + 5 / std::cos(lean);
  const double hull_depth = 25 + entry * std::tan(lean);
  BOOST_TEST(station.axis.z() == -std::sin(lean), tolerance(1e-12));
  BOOST_TEST(station.stack.in_mm() == (entry + 6) / std::cos(lean), tolerance(1e-12));
  BOOST_TEST(station.edge_top.in_mm() == hull_depth - 2, tolerance(1e-9));
  BOOST_TEST(station.edge_low.in_mm() == 25 / std::cos(lean) - 2, tolerance(1e-9));
  BOOST_TEST(station.gap.in_mm() == 2 + 2. / 50 * hull_depth, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_flared_hull_is_thicker_along_a_level_bit) {
  // derived: hull face 10 mm further in at the foot of the lap, so it leans 1 in 5; at
  // 25 deep it stands 5 in; along the level bit 6 mm are 6 secant
  ExampleFaces faces;
  faces.hull_low = -10;
  const DrillStation station = on_a_box(faces);
  const double secant = std::hypot(1, 0.2);
  BOOST_TEST(station.stack.in_mm() == 5 + 8 + 6 * secant, tolerance(1e-12));
  BOOST_TEST(station.gap.in_mm() == 8 * secant, tolerance(1e-12));
  BOOST_TEST(station.edge_top.in_mm() == 25 * secant - 2, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_edge_of_a_sloping_sheer_is_nearer_than_it_is_deep) {
  // derived: sheer rising 1 in 10 along the side: square to the edge 25 deep is 25 cos
  const Joint joint = [] {
    Joint box =
        example_joint({{0, 0, 0}, {0, 500, 0}, {2000, 500, 200}, {2000, 0, 200}}, {});
    box.sheer.curve = CurveKind::Chords;
    return box;
  }();
  const DrillStation station =
      stations_of(joint, {{SideName::Starboard, {1500}}}).front();
  const double expected = 25 / std::hypot(1, 0.1) - 2;
  BOOST_TEST(station.edge_top.in_mm() == expected, tolerance(1e-9));
  BOOST_TEST(station.edge_low.in_mm() == expected, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_low_edge_of_a_tapering_lap_is_met_square) {
  // derived: lap from 40 to 60 over the side's 2000, so its low edge falls 1 in 100; at
  // x = 984 it is 49.84 deep
  Joint joint = box_joint(2000, 1000, {});
  joint.sheer.rows[1].offsets.lap = Length::mm(40);
  joint.sheer.rows[2].offsets.lap = Length::mm(60);
  const DrillStation station =
      stations_of(joint, {{SideName::Starboard, {1500}}}).front();
  BOOST_TEST(station.edge_low.in_mm() == (49.84 - 25) / std::hypot(1, 0.01) - 2,
             tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(round_a_circle_the_hull_girth_goes_with_the_radius) {
  // derived: drill line at radius 808, hull at 800; the spline is within 1e-7 of them
  const Joint joint = circle_joint(800, 61, {});
  const auto stations = stations_of(joint, {{SideName::Starboard, {100, 700, 1900}},
                                            {SideName::Port, {100, 700, 1900}}});
  BOOST_TEST_REQUIRE(stations.size() == 6u);
  for (const DrillStation& station : stations)
    BOOST_TEST(station.hull_girth.in_mm() == station.girth.in_mm() * 800 / 808,
               tolerance(1e-6));
  // derived: chord of an arc
  BOOST_TEST(!stations[0].chord.has_value());
  BOOST_TEST(stations[1].chord->in_mm() == 2 * 808 * std::sin(600. / 808 / 2),
             tolerance(1e-6));
  BOOST_TEST(!stations[3].chord.has_value());
}

BOOST_AUTO_TEST_CASE(starboard_and_port_are_handed) {
  // property: the boat is its own mirror image in the centreline
  ExampleFaces faces;
  faces.lip_low = 5;
  const auto stations =
      stations_of(circle_joint(800, 25, faces),
                  {{SideName::Starboard, {60, 333.3}}, {SideName::Port, {60, 333.3}}});
  for (const std::size_t i : {0u, 1u}) {
    const DrillStation& starboard = stations[i];
    const DrillStation& port = stations[i + 2];
    BOOST_TEST(starboard.point.y() > 0);
    const Vector3 mirror(1, -1, 1);
    BOOST_TEST((starboard.point - port.point.cwiseProduct(mirror)).norm() < 1e-8);
    BOOST_TEST((starboard.axis - port.axis.cwiseProduct(mirror)).norm() < 1e-10);
    BOOST_TEST(starboard.hull_girth.in_mm() == port.hull_girth.in_mm(),
               tolerance(1e-9));
    BOOST_TEST(starboard.stack.in_mm() == port.stack.in_mm(), tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_bit_that_crosses_the_bow_enters_the_hull_before_its_datum) {
  // property: a lip that tapers away from the bow skews the bit towards the bow; the
  // hull girth goes on through the datum without a jump
  Joint joint = circle_joint(800, 61, {});
  joint.sheer.rows[0].offsets.lip_top = Length::mm(12);
  joint.sheer.rows[0].offsets.lip_low = Length::mm(12);
  const auto stations = stations_of(
      joint, {{SideName::Starboard, {0.5, 3, 5.5}}, {SideName::Port, {0.5, 3, 5.5}}});
  BOOST_TEST(stations[0].hull_girth.in_mm() < 0);
  const double first_step = (stations[1].hull_girth - stations[0].hull_girth).in_mm();
  const double second_step = (stations[2].hull_girth - stations[1].hull_girth).in_mm();
  BOOST_TEST(first_step == second_step, tolerance(0.01));
  BOOST_TEST(stations[0].hull_girth.in_mm() == stations[3].hull_girth.in_mm(),
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_bit_close_to_a_corner_goes_by_the_hull) {
  // derived: at 510 mm the bit stands 2 mm aft of the lip's corner, at x = -6, and the
  // hull's corner is at x = 0; at 517 it is at x = 1
  const auto stations =
      stations_of(box_joint(2000, 1000, {}), {{SideName::Starboard, {510, 517}}});
  BOOST_TEST(stations[0].past_hull);
  BOOST_TEST(!stations[1].past_hull);
}

BOOST_AUTO_TEST_CASE(a_drill_line_above_the_hull_has_a_negative_edge) {
  // derived: hull leaning out 1 in 2 and a lip with it: square to the lip the bit rises
  // from 2 deep, 8 level or 8 cos square, by 8 cos sin = 3.2 to 1.2 above the edge,
  // 1.2 secant along the face; the trim tolerance comes off
  ExampleFaces faces;
  faces.hull_low = -25;
  faces.lip_low = -22;
  faces.lip_thickness = 5 * 2 / std::sqrt(5.);  // 5 mm level
  Joint joint = box_joint(2000, 1000, faces);
  joint.fastener.line = Length::mm(2);
  const DrillStation station =
      stations_of(joint, {{SideName::Starboard, {1500}}}).front();
  BOOST_TEST(station.axis.z() > 0);
  BOOST_TEST(station.edge_top.in_mm() == -1.2 * std::sqrt(5.) / 2 - 2, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(marks_take_three_figures_from_a_hundred_holes_on_a_side) {
  std::vector<double> many;
  for (int i = 0; i < 100; ++i) many.push_back(600 + 10 * i);
  const auto stations =
      stations_of(box_joint(2000, 1000, {}),
                  {{SideName::Starboard, many}, {SideName::Transom, {400, 500}}});
  BOOST_TEST_REQUIRE(stations.size() == 102u);
  BOOST_TEST(stations[0].mark == "S001");
  BOOST_TEST(stations[99].mark == "S100");
  BOOST_TEST(stations[101].mark == "T02");
}

BOOST_AUTO_TEST_CASE(pitches_run_from_the_sides_start) {
  const auto stations =
      stations_of(box_joint(2000, 1000, {}),
                  {{SideName::Starboard, {50, 170, 300}}, {SideName::Transom, {400}}});
  BOOST_TEST(stations[0].pitch.in_mm() == 50);
  BOOST_TEST(stations[2].pitch.in_mm() == 130);
  BOOST_TEST(stations[3].pitch.in_mm() == 400);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

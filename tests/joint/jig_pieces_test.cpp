#include "joint/jig_pieces.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "joint/schedule.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

struct Example {
  Perimeter perimeter;
  Schedule schedule;
  std::vector<JigPiece> pieces;
};

Example example(const Joint& joint) {
  Example made{perimeter_of(joint), {}, {}};
  const auto spaced = layout(joint, made.perimeter);
  BOOST_TEST_REQUIRE(spaced.has_value());
  auto worked_out = schedule(joint, made.perimeter, *spaced);
  BOOST_TEST_REQUIRE(worked_out.has_value());
  made.schedule = std::move(*worked_out);
  made.pieces = jig_pieces(made.perimeter, made.schedule.stations, made.schedule.jigs,
                           joint.lip.trim);
  return made;
}

BOOST_AUTO_TEST_SUITE(jig_pieces_suite)

BOOST_AUTO_TEST_CASE(a_jig_round_a_circle_has_the_chord_and_sagitta_of_an_arc) {
  // derived: an arc a of radius R: chord 2 R sin(a / 2R), sagitta R (1 - cos(a / 2R));
  // the drill line is 3 + 5 outside the sheer of 800
  const double radius = 808;
  const Example made = example(circle_joint(800, 90, {}));
  for (const JigPiece& piece : made.pieces) {
    const double half = piece.holes.back().run.in_mm() / (2 * radius);
    // the spline through 90 points is within 1e-5 of the circle
    BOOST_TEST(std::abs(piece.chord.in_mm() - 2 * radius * std::sin(half)) < 1e-3);
    BOOST_TEST(std::abs(piece.middle_off_chord.in_mm() -
                        radius * (1 - std::cos(half))) < 1e-3);
    for (const JigHole& hole : piece.holes) {
      const double angle = hole.run.in_mm() / radius;
      BOOST_TEST(std::abs(hole.straight.in_mm() - 2 * radius * std::sin(angle / 2)) <
                 1e-3);
      BOOST_TEST(std::abs(hole.off_chord.in_mm() -
                          radius * (std::cos(half - angle) - std::cos(half))) < 1e-3);
      // square to the arc: it leans along by the arc from the middle
      BOOST_TEST(std::abs(hole.lean.along.in_radians() - (angle - half)) < 1e-5);
      BOOST_TEST(std::abs(hole.lean.up.in_radians()) < 1e-9);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_hole_is_as_high_above_the_edge_as_the_lip_is_deep_there) {
  // derived: an upright lip 50 deep, drilled 25 down, before any trim is taken off
  for (const JigPiece& piece : example(circle_joint(800, 90, {})).pieces)
    for (const JigHole& hole : piece.holes)
      BOOST_TEST(hole.above_edge.in_mm() == 25, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_bush_stands_square_in_a_flat_plate_on_a_leaning_straight_side) {
  // derived: a box's sides are planes, however they lean
  ExampleFaces faces;
  faces.lip_low = 8;
  for (const JigPiece& piece : example(box_joint(2000, 1000, faces)).pieces)
    for (const JigHole& hole : piece.holes) {
      BOOST_TEST(std::abs(hole.lean.up.in_radians()) < 1e-9);
      BOOST_TEST(std::abs(hole.lean.along.in_radians()) < 1e-9);
      BOOST_TEST(hole.off_chord.in_mm() < 1e-6);
    }
}

BOOST_AUTO_TEST_CASE(a_lip_that_twists_leans_its_bushes_to_both_sides) {
  // derived: the lip leans by atan(0.1) more at the far end of a straight side; the
  // plate takes the mean, and the outer bushes lean by about half of that either way
  Joint joint = box_joint(2000, 1000, {});
  for (std::size_t row = 0; row < joint.sheer.rows.size(); ++row)
    joint.sheer.rows[row].offsets.lip_low = Length::mm(row < 2 ? 3 : 8);
  joint.jig.length_max = Length::mm(5000);
  bool twisted = false;
  for (const JigPiece& piece : example(joint).pieces) {
    const double from = piece.holes.front().lean.up.in_radians();
    const double to = piece.holes.back().lean.up.in_radians();
    if (std::abs(to - from) < 0.01) continue;
    twisted = true;
    BOOST_TEST(from * to < 0);
  }
  BOOST_TEST(twisted);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

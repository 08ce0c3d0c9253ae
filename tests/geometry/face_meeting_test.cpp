#include "geometry/face_meeting.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(face_meeting_suite)

BOOST_AUTO_TEST_CASE(a_turn_to_the_right_is_positive_between_spans_too) {
  const auto curve =
      open_curve({{0, 0, 0}, {100, 0, 0}, {200, -100, 0}, {200, -200, 0}}, true);
  BOOST_TEST(turn_between(*curve, 0, 1) == std::numbers::pi / 4, tolerance(1e-14));
  BOOST_TEST(turn_between(*curve, 0, 2) == std::numbers::pi / 2, tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(spans_that_are_no_neighbours_meet_too) {
  // derived: legs along y = 0 and x = 200 with a chamfer between; 30 mm to the right of
  // them they meet at (170, -30), 70 mm along the first span and before the last's
  // start
  const auto curve =
      open_curve({{0, 0, 0}, {100, 0, 0}, {200, -100, 0}, {200, -300, 0}}, true);
  const auto met = face_meeting(even_face(curve, {-30, -30, 50}), 0, 2, 0);
  BOOST_TEST_REQUIRE(met.has_value());
  BOOST_TEST(met->end_u == 170, tolerance(1e-13));
  BOOST_TEST(met->start_u == -70, tolerance(1e-13));
}

BOOST_AUTO_TEST_CASE(a_change_of_offset_that_hides_the_turn_leaves_a_small_step) {
  // derived: offsets 14 -> -4 -> 14 over 335 and 183 mm lean the faces by 3.1 and 5.6
  // degrees, against a turn of 7: they would meet only beyond the knuckle, on a part
  // carried on. Each is cut back by 4 tan(3.5 degrees) = 0.2446 mm, as parallels are
  const double turn = 7 * std::numbers::pi / 180;
  const auto curve = open_curve(
      {{-335, 0, 0}, {0, 0, 0}, {183 * std::cos(turn), -183 * std::sin(turn), 0}},
      true);
  const RuledFace face(curve, {{14, 14, 50}, {-4, -4, 50}, {14, 14, 50}});
  const auto met = face_meeting(face, 0, 1, 0);
  BOOST_TEST_REQUIRE(met.has_value());
  const double reach = 4 * std::tan(turn / 2);
  BOOST_TEST(met->end_u == 335 - reach, tolerance(1e-12));
  BOOST_TEST(met->start_u == reach, tolerance(1e-9));
  const Vector2 step =
      (face.at({1, met->start_u}, 0).point - face.at({0, met->end_u}, 0).point)
          .head<2>();
  BOOST_TEST(step.norm() < reach * (18 / 335. + 18 / 183.));
}

BOOST_AUTO_TEST_CASE(parallel_lines_do_not_meet) {
  const auto curve =
      open_curve({{0, 0, 0}, {100, 0, 0}, {100, -50, 0}, {0, -50, 0}}, true);
  BOOST_TEST(!face_meeting(even_face(curve, {5, 5, 50}), 0, 2, 0).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/perimeter.h"

#include <algorithm>
#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

/// The starboard half of an ellipse with its bow at the origin.
std::vector<Point3> half_ellipse(double semi_x, double semi_y, std::size_t rows) {
  auto points = ellipse_points(semi_x, semi_y, 2 * (rows - 1));
  points.resize(rows);
  points.back().y() = 0;
  for (Point3& point : points) point.x() += semi_x;
  return points;
}

/// The parabolic sheer of 10 m by 2 m, one half, m made mm.
std::vector<Point3> parabolic_half(int intervals, double rise_mm) {
  std::vector<Point3> points;
  for (int i = 0; i <= intervals; ++i) {
    const double x = -1 + 2. * i / intervals;
    points.emplace_back(5000 * x, 1000 * (1 - x * x), rise_mm * x * x);
  }
  return points;
}

double furthest_apart(const std::vector<Point3>& a, const std::vector<Point3>& b) {
  BOOST_TEST_REQUIRE(a.size() == b.size());
  double most = 0;
  for (std::size_t i = 0; i < a.size(); ++i)
    most = std::max(most, (a[i] - b[i]).norm());
  return most;
}

double volume_ml(const Perimeter& perimeter) {
  const EnclosedSpace space(*perimeter.hull, *perimeter.lip, {0, 1e9});
  double volume = 0;
  for (const PerimeterSide& side : perimeter.sides)
    for (const SpanPart& part : side.parts) volume += space.volume_mm3(part);
  for (const std::size_t knot : perimeter.mitres)
    volume += space.mitre_volume_mm3(knot).value();
  return volume / 1000;
}

BOOST_AUTO_TEST_SUITE(perimeter_suite)

BOOST_AUTO_TEST_CASE(a_parallel_lid_over_an_ellipse_has_the_lengths_of_steiner) {
  // derived: sheer P = 4 a E(e), drill line P + 2 pi (g + t), volume (P g + pi g^2) D
  const double girth = 20000 * boost::math::ellint_2(std::sqrt(1 - 0.16));
  const Perimeter round =
      perimeter_of(example_joint(half_ellipse(5000, 2000, 401), {}));
  BOOST_TEST(round.sheer_length.in_mm() == girth, tolerance(1e-9));
  BOOST_TEST(round.drill_line_length.in_mm() == girth + 2 * pi * 8, tolerance(1e-9));
  BOOST_TEST(volume_ml(round) == (girth * 3 + pi * 9) * 50 / 1000, tolerance(1e-9));
  BOOST_TEST_REQUIRE(round.sides.size() == 2u);
  for (const PerimeterSide& side : round.sides) {
    BOOST_TEST(side.sheer_length.in_mm() == girth / 2, tolerance(1e-9));
    BOOST_TEST((side.start == SideEnd::Smooth && side.end == SideEnd::Smooth));
    BOOST_TEST(side.corners.empty());
  }
  BOOST_TEST(round.mitres.empty());
}

BOOST_AUTO_TEST_CASE(a_parabolic_sheer_is_as_long_as_its_closed_form) {
  // derived: 2 (sqrt(a^2 + 4 H^2) + a^2/(2H) asinh(2H/a)), H^2 = 1^2 + 0.75^2:
  // 20.8045764 m; its ends turn by 43.6 degrees, so they are corners
  const Perimeter sharp = perimeter_of(example_joint(parabolic_half(200, 750), {}));
  BOOST_TEST(sharp.sheer_length.in_mm() == 20804.5764, tolerance(2e-9));
  BOOST_TEST_REQUIRE(sharp.sides.size() == 2u);
  BOOST_TEST((sharp.sides[0].start == SideEnd::Corner));
  BOOST_TEST((sharp.sides[0].end == SideEnd::Corner));
  BOOST_TEST(sharp.mitres.size() == 2u);
  // derived: its chords in plan, m a side
  const struct {
    int intervals;
    double length_m;
  } rows[] = {{4, 10.245091}, {10, 10.258129}, {20, 10.259987}, {40, 10.260452}};
  for (const auto& row : rows) {
    Joint chords = example_joint(parabolic_half(row.intervals, 0), {});
    chords.sheer.curve = CurveKind::Chords;
    chords.sheer.knuckle_angle = Angle::degrees(60);
    BOOST_TEST(perimeter_of(chords).sheer_length.in_mm() == 2000 * row.length_m,
               tolerance(6e-8));
  }
}

BOOST_AUTO_TEST_CASE(a_box_is_worked_by_hand) {
  // derived: 2000 by 1000, the drill line 3 + 5 mm outside; at the bow each side turns
  // its own corner, 500 off the centreline on the sheer and 508 on the drill line
  const Perimeter box = perimeter_of(box_joint(2000, 1000, {}));
  BOOST_TEST(box.sheer_length.in_mm() == 6000, tolerance(1e-13));
  BOOST_TEST(box.drill_line_length.in_mm() == 6000 + 8 * 8, tolerance(1e-13));
  BOOST_TEST(volume_ml(box) == (1006 * 2006 - 1000 * 2000) * 50e-3, tolerance(1e-12));
  BOOST_TEST_REQUIRE(box.sides.size() == 3u);
  for (const std::size_t i : {0u, 1u}) {
    const PerimeterSide& side = box.sides[i];
    BOOST_TEST((side.start == SideEnd::Smooth && side.end == SideEnd::Corner));
    BOOST_TEST(side.sheer_length.in_mm() == 2500, tolerance(1e-13));
    BOOST_TEST(side.drill_line_length.in_mm() == 508 + 2016, tolerance(1e-13));
    BOOST_TEST_REQUIRE(side.corners.size() == 1u);
    BOOST_TEST(side.corners[0].sheer_girth.in_mm() == 500, tolerance(1e-13));
    BOOST_TEST(side.corners[0].girth.in_mm() == 508, tolerance(1e-13));
  }
  BOOST_TEST((box.sides[2].name == SideName::Transom));
  BOOST_TEST(box.sides[2].drill_line_length.in_mm() == 1016, tolerance(1e-13));
  const Point3 corner =
      box.sides[2].drill_line.line().at(box.sides[2].drill_line.place_at({})).point;
  BOOST_TEST((corner - Point3(2008, 508, -25)).norm() < 1e-9);
}

BOOST_AUTO_TEST_CASE(half_a_boat_and_the_whole_of_it_are_the_same) {
  // property: the port images written out change nothing; nor does the order of rows
  const Joint half = with_uneven_offsets(example_joint(small_boat(), {}));
  for (const bool straight : {false, true}) {
    Joint joint = half;
    joint.sheer.curve = straight ? CurveKind::Chords : CurveKind::Spline;
    const auto expected = traces(perimeter_of(joint));
    const double volume = volume_ml(perimeter_of(joint));
    Joint reversed = joint;
    std::reverse(reversed.sheer.rows.begin(), reversed.sheer.rows.end());
    Joint whole_reversed = as_whole(joint);
    std::reverse(whole_reversed.sheer.rows.begin(), whole_reversed.sheer.rows.end());
    Joint other_way_round = as_whole(joint);
    std::reverse(other_way_round.sheer.rows.begin() + 1,
                 other_way_round.sheer.rows.end());
    for (const Joint& other :
         {as_whole(joint), reversed, whole_reversed, other_way_round}) {
      BOOST_TEST(furthest_apart(traces(perimeter_of(other)), expected) < 1e-9);
      BOOST_TEST(volume_ml(perimeter_of(other)) == volume, tolerance(1e-12));
    }
  }
}

BOOST_AUTO_TEST_CASE(port_is_the_mirror_image_of_starboard) {
  const Perimeter boat =
      perimeter_of(with_uneven_offsets(example_joint(small_boat(), {})));
  const auto all = traces(boat);
  const std::size_t each = all.size() / 3;
  for (std::size_t i = 0; i < each; ++i) {
    Point3 mirrored = all[each + i];
    mirrored.y() = -mirrored.y();
    BOOST_TEST((all[i] - mirrored).norm() < 1e-9);
  }
  BOOST_TEST((boat.sides[0].start == SideEnd::Corner));  // the stem
}

BOOST_AUTO_TEST_CASE(a_boat_moved_or_given_in_inches_is_the_same) {
  // property: within 1e-9 of each number
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  const auto expected = traces(perimeter_of(joint));
  const double volume = volume_ml(perimeter_of(joint));
  for (const Vector3& move : {Vector3(-1234.5, 0, 678.9), Vector3(1e5, 0, -1e5)}) {
    Joint moved = joint;
    for (SheerRow& row : moved.sheer.rows) row.point += move;
    const Perimeter there = perimeter_of(moved);
    auto points = traces(there);
    for (std::size_t i = 0; i < points.size(); ++i)
      if (i % 12 != 0) points[i] -= move;  // each twelfth is a length
    BOOST_TEST(furthest_apart(points, expected) < 1e-9);
    BOOST_TEST(volume_ml(there) == volume, tolerance(1e-10));
  }
  Joint inches = joint;
  for (SheerRow& row : inches.sheer.rows)
    for (int axis = 0; axis < 3; ++axis)
      row.point[axis] = Length::inches(row.point[axis] / 25.4).in_mm();
  BOOST_TEST(furthest_apart(traces(perimeter_of(inches)), expected) < 1e-9);
}

BOOST_AUTO_TEST_CASE(points_in_line_may_be_left_out_of_chords) {
  // property: rows put in between by girth, with the offsets that run there, change
  // nothing; close to a corner that is cut back too
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  joint.sheer.curve = CurveKind::Chords;
  const auto expected = traces(perimeter_of(joint));
  const double volume = volume_ml(perimeter_of(joint));
  Joint more = joint;
  more.sheer.rows.clear();
  const auto between = [](Length a, Length b, double share) {
    return a + share * (b - a);
  };
  for (std::size_t i = 0; i + 1 < joint.sheer.rows.size(); ++i) {
    const SheerRow& a = joint.sheer.rows[i];
    const SheerRow& b = joint.sheer.rows[i + 1];
    for (const double share : {0., 0.001, 0.3, 0.9995}) {
      SheerRow row = a;
      row.point = a.point + share * (b.point - a.point);
      row.offsets.lap = between(a.offsets.lap, b.offsets.lap, share);
      row.offsets.hull_low = between(a.offsets.hull_low, b.offsets.hull_low, share);
      row.offsets.lip_top = between(a.offsets.lip_top, b.offsets.lip_top, share);
      row.offsets.lip_low = between(a.offsets.lip_low, b.offsets.lip_low, share);
      more.sheer.rows.push_back(row);
    }
  }
  more.sheer.rows.push_back(joint.sheer.rows.back());
  BOOST_TEST(furthest_apart(traces(perimeter_of(more)), expected) < 1e-6);
  BOOST_TEST(volume_ml(perimeter_of(more)) == volume, tolerance(1e-8));
}

BOOST_AUTO_TEST_CASE(a_joint_that_stops_at_the_transom_corners_ends_there) {
  // property: whatever the table says of the transom; and nothing is carried on there
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  Joint open = joint;
  open.sheer.closed = false;
  Joint cut = open;
  cut.sheer.rows.resize(10);
  const Perimeter boat = perimeter_of(open);
  BOOST_TEST_REQUIRE(boat.sides.size() == 2u);
  BOOST_TEST((boat.sides[0].end == SideEnd::Corner));
  BOOST_TEST((perimeter_of(cut).sides[0].end == SideEnd::End));
  for (const Joint& other : {cut, as_whole(open)}) {
    BOOST_TEST(furthest_apart(traces(boat), traces(perimeter_of(other))) < 1e-9);
    BOOST_TEST(volume_ml(boat) == volume_ml(perimeter_of(other)), tolerance(1e-12));
  }
  const Perimeter closed = perimeter_of(joint);
  for (const std::size_t i : {0u, 1u})
    BOOST_TEST(
        boat.sides[i].sheer_length.in_mm() == closed.sides[i].sheer_length.in_mm(),
        tolerance(1e-12));
  BOOST_TEST(boat.mitres.size() == 1u);  // the stem
  BOOST_TEST(closed.mitres.size() == 3u);
}

BOOST_AUTO_TEST_CASE(a_double_ender_gets_a_knot_on_its_stern_centreline) {
  // property: the sides meet there, the curve is not changed by it, and the offsets run
  // through it by girth
  auto points = ellipse_points(3000, 1500, 61);  // no row at the stern
  points[0].y() = 0;
  Joint joint = example_joint(points, {});
  joint.sheer.half = false;
  joint.sheer.rows[30].offsets.lip_low = Length::mm(4);
  joint.sheer.rows[31].offsets.lip_low = Length::mm(8);
  const Perimeter boat = perimeter_of(joint);
  BOOST_TEST(boat.knots.size() == 62u);
  BOOST_TEST(boat.knots[31].added);
  const Point3 stern = boat.hull->curve().at({31, 0}).point;
  BOOST_TEST(std::abs(stern.y()) < 1e-9);
  BOOST_TEST(stern.x() == 3000, tolerance(1e-3));
  BOOST_TEST(boat.lip->offset({31, 0}, 50).offset == 6, tolerance(1e-9));
  BOOST_TEST_REQUIRE(boat.sides.size() == 2u);
  BOOST_TEST(boat.sides[0].sheer_length.in_mm() == boat.sides[1].sheer_length.in_mm(),
             tolerance(1e-12));
  double girth = 0;
  const auto closed = closed_curve(points);
  for (std::size_t span = 0; span < 61; ++span) girth += closed->girth_mm(span);
  BOOST_TEST(boat.sheer_length.in_mm() == girth, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_boat_need_not_be_alike_on_both_sides) {
  // derived: chords; starboard 500 + 2000, port 500 + 600 + 400 + 1400 by 3-4-5 and
  // with a jog of 400 inboard at 600 aft
  Joint joint = example_joint({{0, 0, 0},
                               {0, 500, 0},
                               {2000, 500, 0},
                               {2000, -100, 0},
                               {600, -100, 0},
                               {600, -500, 0},
                               {0, -500, 0}},
                              {});
  joint.sheer.half = false;
  joint.sheer.curve = CurveKind::Chords;
  const Perimeter boat = perimeter_of(joint);
  BOOST_TEST(boat.side(SideName::Starboard)->sheer_length.in_mm() == 2500);
  BOOST_TEST(boat.side(SideName::Port)->sheer_length.in_mm() == 500 + 600 + 400 + 1400);
  BOOST_TEST(boat.side(SideName::Transom)->sheer_length.in_mm() == 600);
  // round the two outer corners of the jog, less at the inner one; the drill line is
  // 8 mm outside, and each outer corner adds 8 twice, the inner takes off 8 twice
  BOOST_TEST(boat.drill_line_length.in_mm() == 6000 + 16 * 5 - 16 * 1,
             tolerance(1e-12));
  BOOST_TEST(boat.side(SideName::Port)->corners.size() == 3u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

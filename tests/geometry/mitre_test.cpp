#include "geometry/mitre.h"

#include <Eigen/Geometry>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"
#include "tests/geometry/plan_offset.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

constexpr double degrees = pi / 180;

/// Two legs of 1000 mm with a turn to the right between them.
std::shared_ptr<const Curve> bent_line(double turn, double rise_mm = 0) {
  return open_curve({{-1000, 0, -rise_mm},
                     {0, 0, 0},
                     {1000 * std::cos(turn), -1000 * std::sin(turn), rise_mm / 3}},
                    true);
}

/// Twice the area of a polygon in plan.
double twice_area(const std::vector<Point2>& ring) {
  double twice = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point2& a = ring[i];
    const Point2& b = ring[(i + 1) % ring.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return twice;
}

BOOST_AUTO_TEST_SUITE(mitre_suite)

BOOST_AUTO_TEST_CASE(straight_faces_meet_on_the_bisector) {
  // derived: carried on by b tan(a/2), which adds two triangles, b^2 tan(a/2) in all;
  // negative, cut back, to the inside of the turn
  for (const double turn : {1e-12, 1e-9, 1e-7, 1e-5, 0.01, 30 * degrees, 90 * degrees,
                            150 * degrees, 169.9 * degrees})
    for (const double sign : {1., -1.})
      for (const double offset : {8., -5.}) {
        const auto curve = bent_line(sign * turn);
        const RuledFace face = even_face(curve, {offset, offset, 50});
        const double reach = offset * std::tan(sign * turn / 2);
        const auto met = mitre(face, 1, 20);
        BOOST_TEST_REQUIRE(met.has_value());
        BOOST_TEST(std::abs(met->end.u_mm - 1000 - reach) < 1e-9);
        BOOST_TEST(std::abs(met->start.u_mm + reach) < 1e-9);
        BOOST_TEST(std::abs(mitre_area_mm2(face, 1, 20).value() - offset * reach) <
                   1e-7);
      }
}

BOOST_AUTO_TEST_CASE(sloping_legs_are_mitred_in_plan) {
  // derived: legs that rise 1 in 1 and 1 in 3: the reach in plan is that of level ones,
  // and the parameter runs in space, sqrt(2) and sqrt(10)/3 to the unit of plan
  const auto curve = bent_line(90 * degrees, 1000);
  const auto met = mitre(even_face(curve, {8, 8, 50}), 1, 20);
  BOOST_TEST_REQUIRE(met.has_value());
  BOOST_TEST(met->end.u_mm == (1000 + 8) * std::sqrt(2), tolerance(1e-13));
  BOOST_TEST(met->start.u_mm == -8 * std::sqrt(10) / 3, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(both_parts_stand_over_the_same_point) {
  // property, the definition: on curves with knuckles all along, uneven flared faces,
  // offsets that differ between the rows beside the corner. Where a slight turn is lost
  // in the change of the offsets a step is left, no more than that change over the cut
  int meet = 0;
  for (unsigned seed = 0; seed < 40; ++seed) {
    const auto points = winding_points(seed, 9);
    const Curve knuckled(points, {false, seed % 2 == 0, std::vector<bool>(9, true)});
    const auto curve = std::make_shared<const Curve>(knuckled);
    std::vector<RuledOffsets> offsets;
    for (std::size_t i = 0; i < 9; ++i) {
      const double k = static_cast<double>(i + seed);
      offsets.push_back({10 * std::sin(k), 20 * std::cos(3 * k), 50 + 9 * std::sin(k)});
    }
    const RuledFace face(curve, offsets, 5);
    for (std::size_t knot = 1; knot < 8; ++knot) {
      const auto met = mitre(face, knot, 31);
      BOOST_TEST_REQUIRE(met.has_value());
      const Point3 a = face.at(met->end, 31).point;
      const Point3 b = face.at(met->start, 31).point;
      const double chord = curve->chord_mm(knot - 1);
      const double step = (a - b).head<2>().norm();
      const double change =
          std::abs(face.offset({knot - 1, chord}, 31).by_u * (met->end.u_mm - chord)) +
          std::abs(face.offset({knot, 0}, 31).by_u * met->start.u_mm);
      BOOST_TEST(step < 1e-9 + 1.01 * change);
      meet += step < 1e-9;
      BOOST_TEST(met->end.span == knot - 1);
      BOOST_TEST(met->start.span == knot);
      // derived: the wedge as a polygon of 2 x 500 points about the knuckle
      std::vector<Point2> wedge{points[knot].head<2>()};
      for (int i = 0; i <= 500; ++i)
        wedge.push_back(
            face.at({knot - 1, chord + (met->end.u_mm - chord) * i / 500}, 31)
                .point.head<2>());
      for (int i = 0; i <= 500; ++i)
        wedge.push_back(
            face.at({knot, met->start.u_mm * (500 - i) / 500}, 31).point.head<2>());
      BOOST_TEST(std::abs(mitre_area_mm2(face, knot, 31).value() +
                          twice_area(wedge) / 2) < 1e-5);
    }
  }
  BOOST_TEST(meet > 260);  // of 280
}

BOOST_AUTO_TEST_CASE(a_cut_goes_over_knots_closer_than_itself) {
  // property: points put in between on the legs change nothing, be they spline or
  // chords, 0.5 or 3 or 30 mm apart
  for (const bool straight : {true, false})
    for (const double step : {0.5, 3., 30.}) {
      std::vector<Point3> points;
      for (double x = -300; x < -step / 2; x += step) points.emplace_back(x, 0, 0);
      const std::size_t knot = points.size();
      for (double y = 0; y <= 300 + step / 2; y += step) points.emplace_back(0, y, 0);
      CurveShape shape{false, straight, std::vector<bool>(points.size(), false)};
      shape.knuckles[knot] = true;
      const RuledFace face =
          even_face(std::make_shared<const Curve>(points, shape), {20, 20, 50});
      const auto met = mitre(face, knot, 0);
      BOOST_TEST_REQUIRE(met.has_value());
      const Point3 end = face.at(met->end, 0).point;
      BOOST_TEST((end - Point3(-20, 20, 0)).norm() < 1e-9);
      BOOST_TEST((face.at(met->start, 0).point - end).norm() < 1e-9);
      BOOST_TEST(mitre_area_mm2(face, knot, 0).value() == -400, tolerance(1e-9));
    }
}

BOOST_AUTO_TEST_CASE(a_cut_goes_over_bends_that_have_mitres_of_their_own) {
  // reference: GEOS, mitred offset of a polygon, whose area takes in every mitre; a
  // corner to the inside between legs bent every 2 mm, cut back 12 mm and more
  std::vector<Point3> points{{0, -600, 0}, {-30, 300, 0}, {900, 310, 0}};
  for (int i = 60; i >= 0; --i) points.emplace_back(900 + i * i * 0.01, 100 + 2 * i, 0);
  for (int i = 1; i <= 60; ++i) points.emplace_back(900 + 2 * i, 100 + i * i * 0.02, 0);
  points.emplace_back(1500, 300, 0);
  points.emplace_back(1500, -600, 0);
  std::vector<Point2> plan;
  for (const Point3& point : points) plan.push_back(point.head<2>());
  const auto curve = polygon(points);
  for (const double offset : {12., 25., -8.}) {
    const RuledFace face = even_face(curve, {offset, offset, 50});
    double area = -twice_area(plan) / 2;  // clockwise
    for (std::size_t span = 0; span < curve->spans(); ++span)
      area += offset * curve->chord_mm(span);
    for (std::size_t knot = 0; knot < curve->knots(); ++knot)
      area += mitre_area_mm2(face, knot, 0).value();
    BOOST_TEST(area == offset_ring(plan, offset, OffsetJoin::Mitre).area_mm2,
               tolerance(1e-10));
  }
}

BOOST_AUTO_TEST_CASE(a_short_chamfer_between_two_corners_may_vanish) {
  // derived: a corner cut off by 10 mm at one leg, turns of 75 and 15 degrees; an inner
  // offset of 30 mm leaves nothing of it, and the legs meet as if they had no chamfer
  const double far = 10 * std::sin(75 * degrees);
  const auto curve = open_curve({{-1000, 0, 0},
                                 {0, 0, 0},
                                 {10 * std::cos(75 * degrees), -far, 0},
                                 {10 * std::cos(75 * degrees), -1000 - far, 0}},
                                true);
  const RuledFace face = even_face(curve, {-30, -30, 50});
  const auto met = mitre(face, 1, 0);
  BOOST_TEST_REQUIRE(met.has_value());
  BOOST_TEST(met->start.span == 2u);
  const Point3 expected(10 * std::cos(75 * degrees) - 30, -30, 0);
  BOOST_TEST((face.at(met->start, 0).point - expected).norm() < 1e-9);
}

BOOST_AUTO_TEST_CASE(what_one_corner_cuts_off_another_may_carry_on) {
  // derived: a jog of 20 mm, 45 degrees to the left and back: offset by 50 mm, both
  // ends move on along it by 50 tan(22.5 degrees) = 20.71 mm
  const double jog = 20 / std::sqrt(2);
  const auto curve =
      open_curve({{-1000, 0, 0}, {0, 0, 0}, {jog, jog, 0}, {1000 + jog, jog, 0}}, true);
  const RuledFace face = even_face(curve, {50, 50, 50});
  const double reach = 50 * std::tan(22.5 * degrees);
  BOOST_TEST(mitre(face, 1, 0)->start.u_mm == reach, tolerance(1e-12));
  BOOST_TEST(mitre(face, 2, 0)->end.u_mm == 20 + reach, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(faces_that_cannot_meet_are_an_error) {
  // derived: a slot 20 mm wide, its sides offset by 15 mm into it
  const auto curve =
      open_curve({{-1000, 0, 0}, {0, 0, 0}, {0, 20, 0}, {-1000, 20, 0}}, true);
  const auto met = mitre(even_face(curve, {15, 15, 50}), 1, 0);
  BOOST_TEST_REQUIRE(!met.has_value());
  BOOST_TEST(met.error().size() == 1u);
  BOOST_TEST(met.error().front().where == "knot[1]");
  BOOST_TEST(
      met.error().front().message ==
      "the faces on both sides of this corner do not meet, 15.0 mm off a turn of "
      "-90 degrees: a smaller offset, or longer chords from the rows beside it");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

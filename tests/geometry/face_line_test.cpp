#include "geometry/face_line.h"

#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"
#include "tests/geometry/mesh_measure.h"
#include "tests/geometry/plan_offset.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

FaceLine line_at(const RuledFace& face, double depth_mm) {
  return FaceLine::at_depth(std::make_shared<const RuledFace>(face), depth_mm).value();
}

double length_mm(const FaceLine& line) {
  double length = 0;
  for (std::size_t span = 0; span < line.face().curve().spans(); ++span)
    length += line.span_mm(span);
  return length;
}

std::vector<Point2> plan_of(const std::vector<Point3>& points) {
  std::vector<Point2> plan;
  for (const Point3& point : points) plan.push_back(point.head<2>());
  return plan;
}

BOOST_AUTO_TEST_SUITE(face_line)

BOOST_AUTO_TEST_CASE(the_drill_line_round_an_ellipse_is_longer_by_a_circle) {
  // derived: Steiner's formula, P + 2 pi (g + t), P = 4 a E(e)
  const auto curve = closed_curve(ellipse_points(5000, 2000, 800));
  const double perimeter = 20000 * boost::math::ellint_2(std::sqrt(1 - 0.16));
  for (const double gap : {3., -3.})
    BOOST_TEST(length_mm(line_at(even_face(curve, {gap, gap, 50}, 5), 28)) ==
                   perimeter + 2 * pi * (gap + 5),
               tolerance(1e-9));  // the spline's error in the girth
}

BOOST_AUTO_TEST_CASE(a_mitred_line_is_the_mitred_offset_of_geos) {
  // reference: GEOS, GEOSBufferWithStyle, mitre joins; corners to both sides, both
  // offsets
  const std::vector<Point3> points{{0, -600, 0},    {-30, 550, 0},  {1300, 700, 0},
                                   {1400, 420, 0},  {1750, 450, 0}, {1900, -480, 0},
                                   {1000, -790, 0}, {400, -750, 0}};
  for (const double offset : {1., 8., 25., -8., -40.}) {
    const FaceLine line = line_at(even_face(polygon(points), {offset, offset, 50}), 20);
    BOOST_TEST(length_mm(line) ==
                   offset_ring(plan_of(points), offset, OffsetJoin::Mitre).length_mm,
               tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(a_line_cut_back_over_many_chords_is_the_offset_of_geos) {
  // reference: as above; corners to the inside between legs that bend every 2 mm
  std::vector<Point3> points{{0, -600, 0}, {-30, 300, 0}, {900, 310, 0}};
  for (int i = 60; i >= 0; --i) points.emplace_back(900 + i * i * 0.01, 100 + 2 * i, 0);
  for (int i = 1; i <= 60; ++i) points.emplace_back(900 + 2 * i, 100 + i * i * 0.02, 0);
  points.emplace_back(1500, 300, 0);
  points.emplace_back(1500, -600, 0);
  for (const double offset : {3., 12., 25., -8.}) {
    const FaceLine line = line_at(even_face(polygon(points), {offset, offset, 50}), 20);
    BOOST_TEST(length_mm(line) ==
                   offset_ring(plan_of(points), offset, OffsetJoin::Mitre).length_mm,
               tolerance(1e-11));
  }
}

BOOST_AUTO_TEST_CASE(a_smooth_line_keeps_its_distance_by_geos) {
  // reference: GEOS distance to the curve's own polyline of 100000 points, within its
  // sagitta, and the rounded offset's length, within its joins
  const auto points = ellipse_points(3000, 900, 60);
  const auto curve = closed_curve(points);
  std::vector<Point2> fine;
  for (std::size_t span = 0; span < curve->spans(); ++span)
    for (int i = 0; i < 500; ++i)
      fine.push_back(
          curve->at({span, curve->chord_mm(span) * i / 500}).point.head<2>());
  for (const double offset : {11., -9.}) {
    const FaceLine line = line_at(even_face(curve, {offset, offset, 50}), 0);
    for (std::size_t span = 0; span < curve->spans(); span += 7) {
      const Place place{span, 0.3 * curve->chord_mm(span)};
      BOOST_TEST(
          outline_distance_mm(fine, line.at(place).point.head<2>()) == std::abs(offset),
          tolerance(1e-6));
    }
    BOOST_TEST(
        length_mm(line) == offset_ring(fine, offset, OffsetJoin::Round).length_mm,
        tolerance(1e-8));
  }
}

BOOST_AUTO_TEST_CASE(the_length_of_an_uneven_line_is_that_of_a_fine_polyline) {
  // derived: chords of 2000 and 4000 steps a span, extrapolated; laps, slopes and a
  // thickness that change along straight spans too
  for (const bool straight : {true, false})
    for (unsigned seed = 0; seed < 4; ++seed) {
      const auto curve = open_curve(winding_points(seed, 2 + seed), straight);
      std::vector<RuledOffsets> offsets;
      for (std::size_t i = 0; i < curve->knots(); ++i)
        offsets.push_back({2. * static_cast<double>(i), i % 2 == 0 ? 60. : -10.,
                           i % 2 == 0 ? 25. : 90.});
      const FaceLine line = line_at(RuledFace(curve, offsets, 5), 20);
      for (std::size_t span = 0; span < curve->spans(); ++span) {
        const double from = line.begin_u_mm(span);
        const double to = line.end_u_mm(span);
        const auto chords = [&](int steps) {
          double sum = 0;
          const auto point = [&](int i) {
            return line.at({span, from + (to - from) * i / steps}).point;
          };
          for (int i = 0; i < steps; ++i) sum += (point(i + 1) - point(i)).norm();
          return sum;
        };
        if (from < 0 || to > curve->chord_mm(span)) continue;  // a kink within
        BOOST_TEST(line.span_mm(span) == richardson(chords, 2000), tolerance(1e-10));
      }
    }
}

BOOST_AUTO_TEST_CASE(a_place_is_found_again_by_its_length) {
  // property: round trip, all along, also on the parts carried on to a mitre
  const auto points = ellipse_points(1500, 200, 12, 300);
  CurveShape shape{true, false, std::vector<bool>(12, false)};
  shape.knuckles[2] = shape.knuckles[5] = shape.knuckles[9] = true;
  const auto curve = std::make_shared<const Curve>(points, shape);
  for (const double offset : {9., -6.}) {
    const FaceLine line = line_at(even_face(curve, {offset, offset, 50}, 5), 20);
    for (std::size_t span = 0; span < curve->spans(); ++span) {
      const double whole = line.span_mm(span);
      for (const double share : {0., 1e-6, 0.01, 0.5, 0.99, 1 - 1e-6, 1.}) {
        const double u = line.u_at(span, share * whole);
        BOOST_TEST(std::abs(line.length_mm(span, line.begin_u_mm(span), u) -
                            share * whole) < 1e-9);
      }
      const double middle = line.u_at(span, whole / 2);
      BOOST_TEST(line.length_mm(span, line.end_u_mm(span), middle) == -whole / 2,
                 tolerance(1e-9));
    }
  }
}

BOOST_AUTO_TEST_CASE(corners_that_leave_nothing_between_them_are_an_error) {
  // derived: a bay 100 mm long between two corners of 90 degrees to the inside, each
  // cut back 60 mm
  const auto curve = polygon({{0, -600, 0},
                              {0, 600, 0},
                              {900, 600, 0},
                              {900, 300, 0},
                              {1000, 300, 0},
                              {1000, 600, 0},
                              {2000, 600, 0},
                              {2000, -600, 0}});
  const auto line = FaceLine::at_depth(
      std::make_shared<const RuledFace>(even_face(curve, {60, 60, 50})), 0);
  BOOST_TEST_REQUIRE(!line.has_value());
  BOOST_TEST(line.error().size() == 2u);
  BOOST_TEST(line.error()[0].where == "knot[3]");
  BOOST_TEST(line.error()[1].where == "knot[4]");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "geometry/ruled_face.h"

#include <Eigen/Geometry>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A face with different offsets at each knot.
RuledFace uneven_face(const std::shared_ptr<const Curve>& curve, double thickness_mm) {
  std::vector<RuledOffsets> offsets;
  for (std::size_t i = 0; i < curve->knots(); ++i) {
    const double k = static_cast<double>(i);
    offsets.push_back(
        {3 * std::sin(k), 5 + 6 * std::cos(2 * k), 50 + 20 * std::sin(3 * k)});
  }
  return {curve, offsets, thickness_mm};
}

BOOST_AUTO_TEST_SUITE(ruled_face)

BOOST_AUTO_TEST_CASE(outboard_is_to_the_left_of_the_curve) {
  // derived: x aft, y to starboard, z up; bound aft, starboard is to the left
  const auto curve = open_curve({{0, 0, 0}, {100, 0, 30}, {200, 0, 60}}, true);
  const PlanFrame frame = plan_frame(curve->at({0, 10}));
  BOOST_TEST((frame.along - Vector2(1, 0)).norm() == 0);
  BOOST_TEST((frame.outboard - Vector2(0, 1)).norm() == 0);
  const FacePoint on = even_face(curve, {4, 4, 50}).at({0, 0}, 20);
  BOOST_TEST((on.point - Point3(0, 4, -20)).norm() < 1e-15);
  BOOST_TEST((on.normal - Vector3(0, 1, 0)).norm() < 1e-15);
}

BOOST_AUTO_TEST_CASE(the_turn_of_a_circle_is_one_over_its_radius) {
  // derived: going round clockwise with the sea to the left turns to the right
  const auto curve = closed_curve(ellipse_points(1000, 1000, 400));
  for (const std::size_t span : {0u, 100u, 399u}) {
    const PlanFrame frame = plan_frame(curve->at({span, 5}));
    BOOST_TEST(frame.turn / frame.speed == 1e-3,
               tolerance(1e-4));  // the spline's error
  }
}

BOOST_AUTO_TEST_CASE(the_offset_is_level_and_square_to_the_curve_in_plan) {
  // property, by the definition: at any place and depth
  const auto curve = closed_curve(ellipse_points(3000, 1200, 17, 400));
  const RuledFace face = uneven_face(curve, 0);
  for (std::size_t span = 0; span < curve->spans(); ++span)
    for (const double depth : {0., 13., 44.}) {
      const Place place{span, 0.4 * curve->chord_mm(span)};
      const Jet sheer = curve->at(place);
      const Vector3 away = face.at(place, depth).point - sheer.point;
      BOOST_TEST(away.z() == -depth, tolerance(1e-12));
      BOOST_TEST(std::abs(away.head<2>().dot(sheer.first.head<2>())) < 1e-10);
      const double outboard = sheer.first.x() * away.y() - sheer.first.y() * away.x();
      BOOST_TEST(
          outboard / sheer.first.head<2>().norm() == face.offset(place, depth).offset,
          tolerance(1e-9));
    }
}

BOOST_AUTO_TEST_CASE(offsets_run_linearly_by_girth_and_by_depth) {
  // derived: a quarter of the way along a straight span and 20 of 40 mm down
  const auto curve = open_curve({{0, 0, 0}, {300, 0, 400}}, true);
  const RuledFace face(curve, {{2, 6, 32}, {4, 16, 64}});
  BOOST_TEST(face.lap_mm({0, 125}) == 40, tolerance(1e-14));
  // top 2.5, low 8.5: half way down 5.5
  BOOST_TEST(face.offset({0, 125}, 20).offset == 5.5, tolerance(1e-14));
  // on past the low edge in a straight line: 8.5 + 6/40 * 10
  BOOST_TEST(face.offset({0, 125}, 50).offset == 10, tolerance(1e-14));
  // half the girth of a bent span is not half its parameter
  const auto bent = open_curve({{0, 0, 0}, {400, 0, 0}, {500, 300, 0}});
  const RuledFace flared(bent, {{0, 0, 50}, {10, 10, 50}, {0, 0, 50}});
  const double u = 0.5 * bent->chord_mm(0);
  BOOST_TEST(flared.offset({0, u}, 0).offset == 10 * bent->girth_share({0, u}),
             tolerance(1e-13));
  BOOST_TEST(std::abs(bent->girth_share({0, u}) - 0.5) > 1e-3);
}

BOOST_AUTO_TEST_CASE(a_thickness_is_square_to_the_face_in_its_section) {
  // derived: a face that leans 3 in 4 has its outer face 5 * 5/4 = 6.25 mm further out
  const auto curve = open_curve({{0, 0, 0}, {300, 0, 0}}, true);
  const RuledFace inner = even_face(curve, {3, 33, 40});
  const RuledFace outer = even_face(curve, {3, 33, 40}, 5);
  BOOST_TEST(outer.offset({0, 100}, 20).offset == 18 + 6.25, tolerance(1e-14));
  const Vector3 through = outer.at({0, 100}, 20).point - inner.at({0, 100}, 20).point;
  BOOST_TEST(through.dot(inner.at({0, 100}, 20).normal) == 5, tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(derivatives_are_those_of_the_point) {
  // derived: central differences; their error is of order step^2
  for (const bool closed : {true, false}) {
    const auto curve = closed ? closed_curve(ellipse_points(3000, 1200, 17, 400))
                              : open_curve(winding_points(2, 9));
    const RuledFace face = uneven_face(curve, 5);
    for (std::size_t span = 0; span < curve->spans(); ++span) {
      const Place place{span, 0.6 * curve->chord_mm(span)};
      const double step = 1e-2;
      const auto moved = [&](double by_u, double by_depth) {
        return face.at({span, place.u_mm + by_u}, 31 + by_depth).point;
      };
      const FacePoint on = face.at(place, 31);
      const Vector3 by_u = (moved(step, 0) - moved(-step, 0)) / (2 * step);
      const Vector3 by_depth = (moved(0, step) - moved(0, -step)) / (2 * step);
      BOOST_TEST((on.by_u - by_u).norm() < 1e-7);
      BOOST_TEST((on.by_depth - by_depth).norm() < 1e-9);
      BOOST_TEST(std::abs(on.normal.dot(by_u)) < 1e-7);
      BOOST_TEST(std::abs(on.normal.dot(by_depth)) < 1e-7);
      BOOST_TEST(on.area_mm() == by_u.cross(by_depth).norm(), tolerance(1e-7));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_face_shifted_stands_that_much_further_out_all_over) {
  const auto curve = closed_curve(ellipse_points(3000, 1200, 17, 400));
  const RuledFace face = uneven_face(curve, 5);
  const RuledFace shifted = face.shifted(7);
  for (std::size_t span = 0; span < curve->spans(); ++span)
    BOOST_TEST(
        shifted.offset({span, 31}, 17).offset == face.offset({span, 31}, 17).offset + 7,
        tolerance(1e-13));
}

BOOST_AUTO_TEST_CASE(the_other_face_of_a_laminate_is_its_thickness_away) {
  // derived: a face that leans 3 in 4; 6 mm square to it are 6 * 5/4 = 7.5 mm level
  const auto curve = open_curve({{0, 0, 0}, {300, 0, 0}}, true);
  const RuledFace outer = even_face(curve, {0, -30, 40});
  const RuledFace inner = outer.thickened(-6);
  BOOST_TEST(inner.offset({0, 100}, 20).offset == -15 - 7.5, tolerance(1e-14));
  const Vector3 through = inner.at({0, 100}, 20).point - outer.at({0, 100}, 20).point;
  BOOST_TEST(through.dot(outer.at({0, 100}, 20).normal) == -6, tolerance(1e-14));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

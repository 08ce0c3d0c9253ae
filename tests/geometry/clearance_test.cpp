#include "geometry/clearance.h"

#include <Eigen/Geometry>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <functional>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A hull and a lip with offsets that differ from row to row.
std::pair<RuledFace, RuledFace> uneven_faces(const std::shared_ptr<const Curve>& curve,
                                             unsigned seed) {
  std::vector<RuledOffsets> hull, lip;
  for (std::size_t i = 0; i < curve->knots(); ++i) {
    const double k = static_cast<double>(i + seed);
    const double lap = 50 + 9 * std::sin(k);
    hull.push_back({2 * std::sin(k), 9 * std::cos(3 * k), lap});
    lip.push_back({hull.back().top_mm + 4 + 3 * std::cos(k),
                   hull.back().low_mm + 4 + 5 * std::sin(2 * k), lap});
  }
  return {RuledFace(curve, hull), RuledFace(curve, lip)};
}

/// A place by the length run from the start of a span, over the spans on both sides.
Place place_from(const Curve& curve, std::size_t span, double u) {
  while (u < 0) {
    span = curve.span_before(span);
    u += curve.chord_mm(span);
  }
  while (u > curve.chord_mm(span)) {
    u -= curve.chord_mm(span);
    span = curve.knot_after(span);
  }
  return {span, u};
}

/// The least of a function of two numbers, by trying a grid of 41 x 41 and then ever
/// finer ones about the best of the last; no derivative, no start to go wrong from.
Eigen::Vector2d least_by_trying(
    const std::function<double(const Eigen::Vector2d&)>& value,
    const Eigen::Vector2d& centre,
    Eigen::Vector2d reach) {
  Eigen::Vector2d best = centre;
  for (int round = 0; round < 24; ++round) {
    const Eigen::Vector2d about = best;
    double least = value(best);
    for (int i = -20; i <= 20; ++i)
      for (int j = -20; j <= 20; ++j) {
        const Eigen::Vector2d at =
            about + Eigen::Vector2d(reach.x() * i, reach.y() * j) / 20;
        const double here = value(at);
        if (here < least) {
          least = here;
          best = at;
        }
      }
    reach *= 0.3;
  }
  return best;
}

/// How far along a line it meets a face, by trying.
double hit_by_trying(const RuledFace& face,
                     const Point3& origin,
                     const Vector3& direction,
                     std::size_t span) {
  const Curve& curve = face.curve();
  const auto away = [&](const Eigen::Vector2d& at) -> Vector3 {
    return face.at(place_from(curve, span, at.x()), at.y()).point - origin;
  };
  const auto beside = [&](const Eigen::Vector2d& at) {
    return away(at).cross(direction).norm();
  };
  const double chord = curve.chord_mm(span);
  const auto best = least_by_trying(beside, {chord / 2, 30}, {1.5 * chord, 80});
  return away(best).dot(direction);
}

BOOST_AUTO_TEST_SUITE(clearance)

BOOST_AUTO_TEST_CASE(the_gap_between_parallel_cones_is_square_to_them) {
  // derived: a face that leans 3 in 4, the lip 5 mm further out: 5 * 4/5 = 4 mm
  const auto curve = closed_curve(ellipse_points(3000, 3000, 200));
  const RuledFace hull = even_face(curve, {0, 30, 40});
  const RuledFace lip = even_face(curve, {5, 35, 40});
  for (const double depth : {0., 17., 40.}) {
    const auto gap = gap_mm(hull, lip, {3, 20}, depth);
    BOOST_TEST_REQUIRE(gap.has_value());
    BOOST_TEST(*gap == 4, tolerance(1e-6));  // the radius is 3000, not infinite
    BOOST_TEST(*gap_mm(lip, hull, {3, 20}, depth) == -4, tolerance(1e-6));
  }
}

BOOST_AUTO_TEST_CASE(the_gap_is_the_first_hit_of_the_normal_on_the_lip) {
  // derived: the lip is searched all over three spans by trying
  for (unsigned seed = 0; seed < 6; ++seed) {
    const auto curve = closed_curve(ellipse_points(1500, 600, 24, 250));
    const auto [hull, lip] = uneven_faces(curve, seed);
    for (std::size_t span = 0; span < curve->spans(); span += 5)
      for (const double share : {0.01, 0.4, 0.99})
        for (const double depth : {0., 25., 55.}) {
          const Place place{span, share * curve->chord_mm(span)};
          const FacePoint from = hull.at(place, depth);
          const auto gap = gap_mm(hull, lip, place, depth);
          BOOST_TEST_REQUIRE(gap.has_value());
          BOOST_TEST(std::abs(*gap - hit_by_trying(lip, from.point, from.normal,
                                                   span)) < 1e-6);
        }
  }
}

BOOST_AUTO_TEST_CASE(a_hit_lies_on_the_line_and_on_the_face) {
  // property: the definition, to rounding, wherever the boat lies in its coordinates
  for (const double moved : {0., 1e4, 1e6}) {
    auto points = ellipse_points(1500, 600, 24, 250);
    for (Point3& point : points) point += Point3(moved, 0, -moved);
    const auto curve = closed_curve(points);
    const auto [hull, lip] = uneven_faces(curve, 3);
    for (std::size_t span = 0; span < curve->spans(); ++span)
      for (const double depth : {0., 25., 55.}) {
        const FacePoint from = hull.at({span, 1}, depth);
        const auto hit = face_hit(lip, from.point, from.normal, {span, 1}, depth);
        BOOST_TEST_REQUIRE(hit.has_value());
        const Point3 on = lip.at(hit->place, hit->depth_mm).point;
        BOOST_TEST((on - from.point - hit->distance_mm * from.normal).norm() <
                   1e-10 + 1e-14 * moved);
      }
  }
}

BOOST_AUTO_TEST_CASE(the_nearest_place_is_found_by_trying_too) {
  // derived: the line is searched all over three spans by trying
  const auto curve = closed_curve(ellipse_points(1500, 600, 24, 250));
  for (unsigned seed = 0; seed < 4; ++seed) {
    const auto [hull, lip] = uneven_faces(curve, seed);
    for (std::size_t span = 0; span < curve->spans(); ++span)
      for (const double away : {-40., 3., 12., 90.}) {
        const Place near{span, 0.5 * curve->chord_mm(span)};
        const FacePoint on = hull.at(near, 20);
        const Point3 point = on.point + away * on.normal + Point3(7, -4, 2);
        const auto distance = [&, &face = hull](const Eigen::Vector2d& at) {
          return (face.at(place_from(*curve, span, at.x()), 20).point - point).norm();
        };
        const double chord = curve->chord_mm(span);
        const double least =
            distance(least_by_trying(distance, {chord / 2, 0}, {1.5 * chord, 0}));
        const auto place = nearest_place(hull, 20, point, near);
        BOOST_TEST_REQUIRE(place.has_value());
        BOOST_TEST(std::abs((hull.at(*place, 20).point - point).norm() - least) < 1e-9);
      }
  }
}

BOOST_AUTO_TEST_CASE(the_nearest_place_is_found_wherever_the_boat_lies) {
  for (const double moved : {0., 1e4, 1e6}) {
    auto points = ellipse_points(1500, 600, 24, 250);
    for (Point3& point : points) point += Point3(moved, 0, -moved);
    const auto curve = closed_curve(points);
    const RuledFace hull = even_face(curve, {0, 5, 50});
    for (std::size_t span = 0; span < curve->spans(); ++span) {
      const Place near{span, 0.3 * curve->chord_mm(span)};
      const FacePoint on = hull.at(near, 20);
      const auto place = nearest_place(hull, 20, on.point + 9 * on.normal, {span, 0});
      BOOST_TEST_REQUIRE(place.has_value());
      BOOST_TEST(place->span == span);
      BOOST_TEST(std::abs(place->u_mm - near.u_mm) < 1e-9 + 1e-14 * moved);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_line_beside_the_face_meets_nothing) {
  const auto curve = open_curve({{0, 0, 0}, {1000, 0, 0}}, true);
  const RuledFace face = even_face(curve, {5, 5, 50});
  BOOST_TEST(!face_hit(face, {500, 0, -20}, {1, 0, 0}, {0, 500}, 20).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

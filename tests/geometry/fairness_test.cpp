#include "geometry/fairness.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using std::numbers::pi;

constexpr double within_mm = 0.5;

/// Straight along x to the origin, then an arc of `radius_mm` to the right (or up, in
/// profile); stations `step_mm` apart.
std::vector<Point3> straight_into_arc(double radius_mm,
                                      double step_mm,
                                      bool in_profile) {
  std::vector<Point3> points;
  for (int i = -8; i <= 8; ++i) {
    const double along = i * step_mm;
    const double angle = along / radius_mm;
    const double x = i <= 0 ? along : radius_mm * std::sin(angle);
    const double off = i <= 0 ? 0 : radius_mm * (1 - std::cos(angle));
    points.push_back(in_profile ? Point3(x, 0, off) : Point3(x, -off, 0));
  }
  return points;
}

/// How far the curve leaves the line y = 0, z = 0 within a span.
double leaves_the_axis_by(const Curve& curve, std::size_t span) {
  double most = 0;
  for (int i = 0; i <= 200; ++i)
    most = std::max(
        most, curve.at({span, curve.chord_mm(span) * i / 200}).point.tail<2>().norm());
  return most;
}

const Unfair* found(const std::vector<Unfair>& unfair,
                    std::size_t span,
                    bool in_profile) {
  const auto at = std::find_if(unfair.begin(), unfair.end(), [&](const Unfair& one) {
    return one.span == span && one.in_profile == in_profile;
  });
  return at == unfair.end() ? nullptr : &*at;
}

BOOST_AUTO_TEST_SUITE(fairness)

BOOST_AUTO_TEST_CASE(a_fair_sheer_is_not_warned_of) {
  // property: smooth ovals and a parabola, at even and at uneven stations
  for (const std::size_t count : {12u, 20u, 60u}) {
    const auto oval = closed_curve(ellipse_points(3000, 1200, count, 350));
    BOOST_TEST(unfair_spans(*oval, within_mm).empty());
  }
  std::vector<Point3> uneven;
  for (const double share : {-1., -0.97, -0.8, -0.5, -0.45, 0., 0.1, 0.6, 0.9, 1.})
    uneven.emplace_back(5000 * share, 1000 * (1 - share * share), 750 * share * share);
  BOOST_TEST(unfair_spans(*open_curve(uneven), within_mm).empty());
  // published: C. H. Clark, 12 ft row boat, Amateur Work vol. 3 (c. 1904)
  BOOST_TEST(unfair_spans(*open_curve({{914.4, 482.6, 635},
                                       {1828.8, 609.6, 571.5},
                                       {2743.2, 571.5, 568.325},
                                       {3657.6, 419.1, 625.475}}),
                          within_mm)
                 .empty());
}

BOOST_AUTO_TEST_CASE(a_straight_side_into_an_arc_is_warned_of_where_it_waves) {
  // derived: the wave's height measured off the axis; the points there are in line, so
  // all of it is false. The estimate from the turn is within a third of it. The span
  // next to the arc is left out: the points turn at its end, and so may the curve
  int waves = 0;
  for (const bool in_profile : {false, true})
    for (const double step : {120., 400., 500., 700.}) {
      const auto curve = open_curve(straight_into_arc(1500, step, in_profile));
      const auto unfair = unfair_spans(*curve, within_mm);
      for (std::size_t span = 0; span < 7; ++span) {
        const double height = leaves_the_axis_by(*curve, span);
        const Unfair* warned = found(unfair, span, in_profile);
        if (height > 1.5 * within_mm) {
          ++waves;
          BOOST_TEST_REQUIRE(warned != nullptr);
          BOOST_TEST(std::abs(warned->height_mm - height) < height / 3);
        }
        if (height < within_mm / 1.5) BOOST_TEST(warned == nullptr);
        BOOST_TEST(found(unfair, span, !in_profile) == nullptr);
      }
    }
  BOOST_TEST(waves >= 4);
}

BOOST_AUTO_TEST_CASE(a_hollow_between_uneven_stations_is_warned_of) {
  // derived: points that turn one way all along, a quick turn between long spans; the
  // curve crosses the chord to the hollow side where it is warned of
  const std::vector<Point3> points{{0, 0, 0},       {1000, -10, 0}, {2000, -40, 0},
                                   {2040, -50, 0},  {2075, -75, 0}, {3000, -1000, 0},
                                   {3500, -1600, 0}};
  for (const double turn : plan_turns(points, false)) BOOST_TEST(turn >= 0);
  const auto curve = open_curve(points);
  const auto unfair = unfair_spans(*curve, within_mm);
  const auto hollow = [&](std::size_t span) {
    const Point3 from = points[span];
    const Vector3 chord = (points[span + 1] - from).normalized();
    double most = 0;  // to the right of the chord, the inside of the bend
    for (int i = 0; i <= 200; ++i) {
      const Vector3 away =
          curve->at({span, curve->chord_mm(span) * i / 200}).point - from;
      most = std::max(most, chord.y() * away.x() - chord.x() * away.y());
    }
    return most;
  };
  int hollows = 0;
  for (std::size_t span = 0; span < curve->spans(); ++span)
    if (hollow(span) > 2 * within_mm) {
      ++hollows;
      BOOST_TEST(found(unfair, span, false) != nullptr);
    }
  BOOST_TEST(hollows > 0);
}

BOOST_AUTO_TEST_CASE(points_that_wave_are_followed_without_a_word) {
  // property: a bend the points have themselves is not false
  std::vector<Point3> points;
  for (int i = 0; i <= 40; ++i)
    points.emplace_back(150 * i, 200 * std::sin(i * pi / 10),
                        40 * std::cos(i * pi / 10));
  BOOST_TEST(unfair_spans(*open_curve(points), within_mm).empty());
}

BOOST_AUTO_TEST_CASE(a_knuckle_ends_the_matter) {
  // property: the same side into the same arc, flagged where they meet
  auto points = straight_into_arc(1500, 500, false);
  CurveShape shape{false, false, std::vector<bool>(points.size(), false)};
  shape.knuckles[8] = true;
  BOOST_TEST(unfair_spans(Curve(points, shape), within_mm).empty());
}

BOOST_AUTO_TEST_CASE(a_polyline_has_no_hollows) {
  BOOST_TEST(
      unfair_spans(*open_curve(straight_into_arc(1500, 500, false), true), within_mm)
          .empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

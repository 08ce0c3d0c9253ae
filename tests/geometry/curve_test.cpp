#include "geometry/curve.h"

#include <gsl/gsl_integration.h>
#include <gsl/gsl_spline.h>

#include <array>
#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <memory>
#include <numbers>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

double girth_mm(const Curve& curve) {
  double girth = 0;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    girth += curve.girth_mm(span);
  return girth;
}

/// The speed of a curve, for GSL's integrators.
struct Speed {
  const Curve& curve;
  std::size_t span;

  static double at(double u, void* self) {
    const auto& speed = *static_cast<const Speed*>(self);
    return speed.curve.at({speed.span, u}).first.norm();
  }
};

double gsl_girth_mm(const Curve& curve, std::size_t span, double to_u) {
  Speed speed{curve, span};
  gsl_function function{&Speed::at, &speed};
  const std::unique_ptr<gsl_integration_workspace,
                        decltype(&gsl_integration_workspace_free)>
      workspace(gsl_integration_workspace_alloc(1000), &gsl_integration_workspace_free);
  double girth = 0;
  double error = 0;
  gsl_integration_qag(&function, 0, to_u, 0, 1e-13, 1000, GSL_INTEG_GAUSS61,
                      workspace.get(), &girth, &error);
  return girth;
}

/// Three GSL splines, one an axis, over the chord-length parameter.
class GslSpline {
 public:
  explicit GslSpline(const std::vector<Point3>& points) {
    std::array<std::vector<double>, 3> values;
    for (std::size_t i = 0; i <= points.size(); ++i) {
      const Point3& point = points[i % points.size()];
      t_.push_back(i == 0 ? 0 : t_.back() + (point - points[i - 1]).norm());
      for (std::size_t axis = 0; axis < 3; ++axis)
        values[axis].push_back(point[static_cast<Eigen::Index>(axis)]);
    }
    for (std::size_t axis = 0; axis < 3; ++axis) {
      splines_[axis].reset(gsl_spline_alloc(gsl_interp_cspline_periodic, t_.size()));
      gsl_spline_init(splines_[axis].get(), t_.data(), values[axis].data(), t_.size());
    }
  }

  Jet at(Place place) const {
    const double t = t_[place.span] + place.u_mm;
    Jet jet;
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const auto row = static_cast<Eigen::Index>(axis);
      jet.point[row] = gsl_spline_eval(splines_[axis].get(), t, nullptr);
      jet.first[row] = gsl_spline_eval_deriv(splines_[axis].get(), t, nullptr);
      jet.second[row] = gsl_spline_eval_deriv2(splines_[axis].get(), t, nullptr);
    }
    return jet;
  }

 private:
  struct Free {
    void operator()(gsl_spline* spline) const { gsl_spline_free(spline); }
  };
  std::vector<double> t_;
  std::array<std::unique_ptr<gsl_spline, Free>, 3> splines_;
};

BOOST_AUTO_TEST_SUITE(curve)

BOOST_AUTO_TEST_CASE(a_closed_smooth_curve_is_the_periodic_spline_of_gsl) {
  // reference: GSL, gsl_interp_cspline_periodic, values and derivatives
  auto points = ellipse_points(5000, 2000, 25, 300);
  points[3] += Point3(-170, 220, -35);  // no symmetry
  const auto curve = closed_curve(points);
  const GslSpline reference(points);
  for (std::size_t span = 0; span < curve->spans(); ++span)
    for (const double share : {0., 0.2, 0.5, 0.93}) {
      const Place place{span, share * curve->chord_mm(span)};
      const Jet jet = curve->at(place);
      const Jet expected = reference.at(place);
      // rounding, of coordinates up to 5000 mm
      BOOST_TEST((jet.point - expected.point).norm() < 1e-8);
      BOOST_TEST((jet.first - expected.first).norm() < 1e-11);
      BOOST_TEST((jet.second - expected.second).norm() < 1e-13);
    }
}

BOOST_AUTO_TEST_CASE(the_girth_of_each_span_is_that_of_gsl_within_1e_12) {
  // reference: GSL, adaptive 61-point Gauss-Kronrod
  for (const std::size_t count : {4u, 9u, 40u, 100u, 150u, 400u}) {
    const auto curve = closed_curve(ellipse_points(5000, 700, count, 300));
    for (std::size_t span = 0; span < curve->spans(); ++span) {
      const double chord = curve->chord_mm(span);
      BOOST_TEST(curve->girth_mm(span) == gsl_girth_mm(*curve, span, chord),
                 tolerance(1e-12));
      const double part = gsl_girth_mm(*curve, span, 0.3 * chord);
      BOOST_TEST(
          curve->girth_share({span, 0.3 * chord}) * curve->girth_mm(span) == part,
          tolerance(1e-12));
    }
  }
  const auto winding = open_curve(winding_points(11, 40));
  for (std::size_t span = 0; span < winding->spans(); ++span)
    BOOST_TEST(winding->girth_mm(span) ==
                   gsl_girth_mm(*winding, span, winding->chord_mm(span)),
               tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_girth_of_an_ellipse_converges_to_the_elliptic_integral) {
  // derived: perimeter 4 a E(e), E by Boost.Math; a cubic spline's error in place is of
  // the fourth order, so the girth's falls about 16 times a doubling
  const double semi_x = 5000;
  const double semi_y = 2000;
  const double exact = 4 * semi_x * boost::math::ellint_2(std::sqrt(1 - 0.16));
  double last = 0;
  for (const std::size_t count : {50u, 100u, 200u, 400u, 800u}) {
    const auto curve = closed_curve(ellipse_points(semi_x, semi_y, count));
    const double error = std::abs(girth_mm(*curve) - exact);
    if (count > 50) BOOST_TEST(last / error > 15);
    last = error;
  }
  BOOST_TEST(last < 1e-9 * exact);
}

BOOST_AUTO_TEST_CASE(the_girth_of_a_parabolic_sheer_takes_in_its_rise) {
  // derived: S = sqrt(a^2 + 4 H^2) + a^2/(2H) asinh(2H/a), H^2 = (B/2)^2 + s^2, for one
  // side; L = 10 m, B = 2 m, s = 0.75 m: 20.8045764 m for both sides
  std::vector<Point3> points;
  for (int i = 0; i <= 200; ++i) {
    const double x = -1 + i / 100.;
    points.emplace_back(5000 * x, 1000 * (1 - x * x), 750 * x * x);
  }
  BOOST_TEST(2 * girth_mm(*open_curve(points)) == 20804.5764, tolerance(2e-9));
}

BOOST_AUTO_TEST_CASE(a_polyline_is_as_long_as_its_chords) {
  // derived: chords of y = 1 - (x/5)^2 at even stations, one side, m
  const struct {
    int intervals;
    double length_m;
  } rows[] = {{2, 10.198039},
              {4, 10.245091},
              {10, 10.258129},
              {20, 10.259987},
              {40, 10.260452}};
  for (const auto& row : rows) {
    std::vector<Point3> points;
    for (int i = 0; i <= row.intervals; ++i) {
      const double x = -1 + 2. * i / row.intervals;
      points.emplace_back(5000 * x, 1000 * (1 - x * x), 0);
    }
    BOOST_TEST(girth_mm(*open_curve(points, true)) == 1000 * row.length_m,
               tolerance(6e-8));  // half the last digit
  }
  // published: C. H. Clark, 12 ft row boat, Amateur Work vol. 3 (c. 1904), table of
  // offsets, gunwale at moulds 1 to 3 and stern; chords 36.4314 + 36.0315 + 36.5659 in
  const std::vector<Point3> row_boat{{914.4, 482.6, 635},
                                     {1828.8, 609.6, 571.5},
                                     {2743.2, 571.5, 568.325},
                                     {3657.6, 419.1, 625.475}};
  BOOST_TEST(girth_mm(*open_curve(row_boat, true)) == 2769.33, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(a_curve_is_smooth_but_for_its_knuckles) {
  // property: C2 at a knot; at a knuckle the halves know nothing of each other
  auto points = winding_points(3, 9);
  CurveShape shape{false, false, std::vector<bool>(9, false)};
  shape.knuckles[4] = true;
  const Curve curve(points, shape);
  for (std::size_t knot = 1; knot < 8; ++knot) {
    BOOST_TEST(curve.smooth_at(knot) == (knot != 4));
    const Jet before = curve.at({knot - 1, curve.chord_mm(knot - 1)});
    const Jet after = curve.at({knot, 0});
    BOOST_TEST((before.point - points[knot]).norm() < 1e-9);
    BOOST_TEST((after.point - points[knot]).norm() < 1e-9);
    if (knot == 4) continue;
    BOOST_TEST((before.first - after.first).norm() < 1e-12);
    BOOST_TEST((before.second - after.second).norm() < 1e-14);
  }
  const Curve first({points.begin(), points.begin() + 5},
                    CurveShape{false, false, std::vector<bool>(5, false)});
  for (std::size_t span = 0; span < 4; ++span)
    BOOST_TEST((first.at({span, 40}).point - curve.at({span, 40}).point).norm() < 1e-9);
  BOOST_TEST(!curve.smooth_at(0));
  BOOST_TEST(!curve.smooth_at(8));
}

BOOST_AUTO_TEST_CASE(a_closed_curve_with_knuckles_is_made_of_open_ones) {
  // property: from knuckle to knuckle the closed curve is the open spline, also across
  // the point where it closes
  const auto points = ellipse_points(5000, 2000, 12, 300);
  CurveShape shape{true, false, std::vector<bool>(12, false)};
  shape.knuckles[2] = shape.knuckles[7] = true;
  const Curve curve(points, shape);
  std::vector<Point3> round_the_end;
  for (std::size_t i = 7; i <= 14; ++i) round_the_end.push_back(points[i % 12]);
  const auto open = open_curve(round_the_end);
  for (std::size_t span = 0; span < 7; ++span)
    BOOST_TEST(
        (open->at({span, 300}).point - curve.at({(span + 7) % 12, 300}).point).norm() <
        1e-9);
  shape.knuckles[2] = false;  // one knuckle alone: the curve starts and ends there
  const Curve one(points, shape);
  BOOST_TEST(one.smooth_at(2));
  BOOST_TEST((one.at({6, one.chord_mm(6)}).first - one.at({7, 0}).first).norm() > 1e-3);
}

BOOST_AUTO_TEST_CASE(a_knot_more_leaves_the_curve_as_it_is) {
  const auto curve = closed_curve(ellipse_points(5000, 2000, 12, 300));
  for (const std::size_t span : {0u, 5u, 11u}) {
    const double cut = 0.37 * curve->chord_mm(span);
    const Curve more = curve->with_knot({span, cut});
    BOOST_TEST(more.spans() == 13u);
    BOOST_TEST(more.smooth_at(span + 1));
    BOOST_TEST(girth_mm(more) == girth_mm(*curve), tolerance(1e-13));
    const double beyond = 0.8 * curve->chord_mm(span);
    const Jet expected = curve->at({span, beyond});
    const Jet jet = more.at({span + 1, beyond - cut});
    BOOST_TEST((jet.point - expected.point).norm() < 1e-9);
    BOOST_TEST((jet.first - expected.first).norm() < 1e-12);
    BOOST_TEST((jet.second - expected.second).norm() < 1e-14);
    BOOST_TEST((more.at({span, 100}).point - curve->at({span, 100}).point).norm() == 0);
  }
}

BOOST_AUTO_TEST_CASE(beyond_a_free_end_the_curve_is_its_tangent) {
  const auto curve = open_curve(winding_points(5, 6));
  const Jet end = curve->at({4, curve->chord_mm(4)});
  const Jet beyond = curve->at({4, curve->chord_mm(4) + 25});
  BOOST_TEST((beyond.point - end.point - 25 * end.first).norm() < 1e-10);
  BOOST_TEST((beyond.first - end.first).norm() == 0);
  BOOST_TEST(beyond.second.norm() == 0);
  const Jet before = curve->at({0, -25});
  BOOST_TEST(
      (before.point - curve->at({0, 0}).point + 25 * curve->at({0, 0}).first).norm() <
      1e-10);
  BOOST_TEST(curve->girth_share({0, -25}) == 0);
  BOOST_TEST(curve->girth_share({4, curve->chord_mm(4) + 25}) == 1);
}

BOOST_AUTO_TEST_CASE(a_place_moves_over_smooth_knots_and_stops_at_none) {
  const auto curve = closed_curve(ellipse_points(5000, 2000, 12));
  const double chord = curve->chord_mm(11);
  const Place over_the_end = curve->moved({11, chord - 10}, 30);
  BOOST_TEST(over_the_end.span == 0u);
  BOOST_TEST(over_the_end.u_mm == 20, tolerance(1e-9));
  const Place back = curve->moved(over_the_end, -30);
  BOOST_TEST(back.span == 11u);
  BOOST_TEST(back.u_mm == chord - 10, tolerance(1e-12));
  const auto bent = open_curve({{0, 0, 0}, {100, 0, 0}, {100, 100, 0}}, true);
  const Place carried_on = bent->moved({0, 90}, 30);
  BOOST_TEST(carried_on.span == 0u);
  BOOST_TEST(carried_on.u_mm == 120);
}

BOOST_AUTO_TEST_CASE(a_turn_to_the_right_is_positive) {
  // derived: x aft, y to starboard, z up: from aft to port is a turn to the right
  const std::vector<Point3> points{{0, 0, 0}, {10, 0, 5}, {20, -10, 9}, {20, 0, 9}};
  const auto turns = plan_turns(points, false);
  BOOST_TEST(turns[0] == 0);
  BOOST_TEST(turns[1] == std::numbers::pi / 4, tolerance(1e-15));
  BOOST_TEST(turns[2] == -3 * std::numbers::pi / 4, tolerance(1e-15));
  BOOST_TEST(turns[3] == 0);
  double round = 0;
  for (const double turn : plan_turns(ellipse_points(5, 2, 9), true)) round += turn;
  BOOST_TEST(round == 2 * std::numbers::pi, tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(no_span_turns_more_than_its_bend) {
  // property, in space: the turn from tangent to tangent, summed over small steps
  for (unsigned seed = 0; seed < 10; ++seed) {
    const auto curve = open_curve(winding_points(seed, 12));
    for (std::size_t span = 0; span < curve->spans(); ++span) {
      double turn = 0;
      Vector3 last = curve->at({span, 0}).first.normalized();
      for (int i = 1; i <= 1000; ++i) {
        const double u = curve->chord_mm(span) * i / 1000;
        const Vector3 next = curve->at({span, u}).first.normalized();
        turn += 2 * std::asin((next - last).norm() / 2);
        last = next;
      }
      BOOST_TEST(turn <= curve->bend(span) + 1e-9);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

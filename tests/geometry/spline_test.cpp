#include "geometry/spline.h"

#include <gsl/gsl_spline.h>

#include <Eigen/Dense>
#include <boost/test/unit_test.hpp>
#include <memory>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

/// The chord-length parameter of each point, and of the first again if it is closed.
std::vector<double> chord_parameters(const std::vector<Point3>& points, bool closed) {
  std::vector<double> parameters{0};
  for (std::size_t i = 1; i < points.size() + (closed ? 1 : 0); ++i)
    parameters.push_back(parameters.back() +
                         (points[i % points.size()] - points[i - 1]).norm());
  return parameters;
}

/// One unknown cubic a span, written out in full: values at both ends, first and second
/// derivatives alike from span to span, third derivatives alike at the second knot and
/// at the last but one. Solved densely; nothing of it is shared with the code tried.
std::vector<double> second_derivatives_by_definition(const std::vector<double>& t,
                                                     const std::vector<double>& value) {
  const auto spans = static_cast<Eigen::Index>(t.size()) - 1;
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(4 * spans, 4 * spans);
  Eigen::VectorXd right = Eigen::VectorXd::Zero(4 * spans);
  Eigen::Index row = 0;
  for (Eigen::Index i = 0; i < spans; ++i) {
    const auto knot = static_cast<std::size_t>(i);
    const double h = t[knot + 1] - t[knot];
    matrix(row, 4 * i) = 1;
    right(row++) = value[knot];
    matrix.block<1, 4>(row, 4 * i) << 1, h, h * h, h * h * h;
    right(row++) = value[knot + 1];
    if (i + 1 == spans) continue;
    matrix.block<1, 8>(row++, 4 * i) << 0, 1, 2 * h, 3 * h * h, 0, -1, 0, 0;
    matrix.block<1, 8>(row++, 4 * i) << 0, 0, 2, 6 * h, 0, 0, -2, 0;
  }
  for (const Eigen::Index i : {Eigen::Index(0), spans - 2}) {
    matrix(row, 4 * i + 3) = 1;
    matrix(row++, 4 * i + 7) = -1;
  }
  const Eigen::VectorXd solution = matrix.fullPivLu().solve(right);
  std::vector<double> second;
  for (Eigen::Index i = 0; i < spans; ++i) second.push_back(2 * solution(4 * i + 2));
  const double h = t.back() - t[t.size() - 2];
  second.push_back(2 * solution(4 * spans - 2) + 6 * h * solution(4 * spans - 1));
  return second;
}

BOOST_AUTO_TEST_SUITE(spline)

BOOST_AUTO_TEST_CASE(an_open_spline_meets_the_conditions_that_define_it) {
  // derived: the 4(n-1) defining equations, solved densely by Eigen
  for (const std::size_t count : {4u, 5u, 9u, 30u}) {
    const auto points = winding_points(7, count);
    const auto parameters = chord_parameters(points, false);
    const auto second = open_spline_second_derivatives(points);
    BOOST_TEST_REQUIRE(second.size() == count);
    for (int axis = 0; axis < 3; ++axis) {
      std::vector<double> values;
      for (const Point3& point : points) values.push_back(point[axis]);
      const auto expected = second_derivatives_by_definition(parameters, values);
      for (std::size_t i = 0; i < count; ++i)
        BOOST_TEST(std::abs(second[i][axis] - expected[i]) < 1e-11);  // of about 1e-2
    }
  }
}

BOOST_AUTO_TEST_CASE(two_points_give_a_straight_line_and_three_a_parabola) {
  const auto two = open_spline_second_derivatives({{0, 0, 0}, {3, 4, 0}});
  BOOST_TEST(two[0].norm() == 0);
  BOOST_TEST(two[1].norm() == 0);
  // derived: chords 5 and 5; y(0) = 0, y(5) = 4, y(10) = 0 is y = 4 - 4 (t - 5)^2/25,
  // so y'' = -8/25, and x = 3 t / 5
  const auto three = open_spline_second_derivatives({{0, 0, 0}, {3, 4, 0}, {6, 0, 0}});
  for (const Vector3& second : three)
    BOOST_TEST((second - Vector3(0, -0.32, 0)).norm() < 1e-15);
}

BOOST_AUTO_TEST_CASE(a_periodic_spline_agrees_with_that_of_gsl) {
  // reference: GSL, gsl_interp_cspline_periodic
  for (const std::size_t count : {3u, 4u, 12u, 101u}) {
    auto points = ellipse_points(5000, 2000, count, 300);
    points[1] += Point3(-170, 220, -35);  // uneven chords, no symmetry
    const auto t = chord_parameters(points, true);
    const auto second = periodic_spline_second_derivatives(points);
    for (int axis = 0; axis < 3; ++axis) {
      std::vector<double> values;
      for (const Point3& point : points) values.push_back(point[axis]);
      values.push_back(points[0][axis]);
      const std::unique_ptr<gsl_spline, decltype(&gsl_spline_free)> reference(
          gsl_spline_alloc(gsl_interp_cspline_periodic, t.size()), &gsl_spline_free);
      gsl_spline_init(reference.get(), t.data(), values.data(), t.size());
      for (std::size_t i = 0; i < count; ++i) {
        const double expected = gsl_spline_eval_deriv2(reference.get(), t[i], nullptr);
        BOOST_TEST(std::abs(second[i][axis] - expected) < 1e-13);  // of about 1e-3
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

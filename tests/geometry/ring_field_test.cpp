#include "geometry/ring_field.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "geometry/random_stream.h"

namespace sheerlap {
namespace {

constexpr double false_alarm = 1e-6;  ///< of one test of chance with a fresh seed

std::vector<double> even_points(double length, int count) {
  std::vector<double> along;
  for (int i = 0; i < count; ++i) along.push_back(length * i / count);
  return along;
}

/// Round a ring of length P, by what reaches from either hand and from more turns on.
double ring_correlation(double apart, double length, double correlation) {
  double sum = 0, unit = 0;
  for (int turn = -40; turn <= 40; ++turn) {
    const auto bell = [&](double distance) {
      return std::exp(-distance * distance / (2 * correlation * correlation));
    };
    sum += bell(apart + turn * length);
    unit += bell(turn * length);
  }
  return sum / unit;
}

Eigen::VectorXd unit_normals(std::uint64_t boat, Eigen::Index count) {
  RandomStream stream(640, boat, 9);
  Eigen::VectorXd normals(count);
  for (double& value : normals) value = stream.normal();
  return normals;
}

/// Deviations from `expected` of the mean of n values with these sums.
double deviations(double sum, double squares, double n, double expected) {
  const double mean = sum / n;
  return (mean - expected) / std::sqrt((squares / n - mean * mean) / (n - 1));
}

bool believable(double deviations) {
  const double chance =
      boost::math::cdf(boost::math::normal_distribution<>(), deviations);
  return chance > false_alarm / 2 && chance < 1 - false_alarm / 2;
}

BOOST_AUTO_TEST_SUITE(ring_field)

BOOST_AUTO_TEST_CASE(the_variance_is_1_at_every_point) {
  // property: of independent unit normals it is the square of the row's length
  for (const bool closed : {true, false})
    for (const double correlation : {60., 700., 5000., 90000.}) {
      const FieldLine line{15762, correlation, closed};
      const Eigen::MatrixXd basis = field_basis(line, even_points(15762, 37));
      BOOST_TEST(basis.cols() == field_terms(line));
      for (Eigen::Index point = 0; point < basis.rows(); ++point)
        BOOST_TEST(basis.row(point).squaredNorm() == 1,
                   boost::test_tools::tolerance(1e-12));  // hundreds of terms summed
    }
}

BOOST_AUTO_TEST_CASE(points_of_a_ring_are_alike_as_the_wrapped_bell_says) {
  // derived: Poisson's summation, the other side of which is summed here
  for (const double correlation : {200., 2500., 8000., 30000.}) {
    const FieldLine line{15762, correlation, true};
    const std::vector<double> along = even_points(15762, 53);
    const Eigen::MatrixXd basis = field_basis(line, along);
    for (std::size_t point = 0; point < along.size(); ++point) {
      const double found =
          basis.row(0).dot(basis.row(static_cast<Eigen::Index>(point)));
      const double expected = ring_correlation(along[point], 15762, correlation);
      BOOST_TEST(std::abs(found - expected) < 2e-6);  // as the header promises
    }
  }
}

BOOST_AUTO_TEST_CASE(
    the_ends_of_an_open_line_are_strangers_and_those_of_a_ring_are_one) {
  const std::vector<double> along{0, 300, 9700, 10000};
  const Eigen::MatrixXd open = field_basis({10000, 300, false}, along);
  const Eigen::MatrixXd ring = field_basis({10000, 300, true}, along);
  // derived: exp(-1 / 2) one correlation length apart
  BOOST_TEST(std::abs(open.row(0).dot(open.row(1)) - std::exp(-0.5)) < 2e-6);
  BOOST_TEST(std::abs(open.row(0).dot(open.row(3))) < 2e-6);
  BOOST_TEST(std::abs(ring.row(0).dot(ring.row(3)) - 1) < 1e-12);
  BOOST_TEST(std::abs(ring.row(0).dot(ring.row(2)) - std::exp(-0.5)) < 2e-6);
}

BOOST_AUTO_TEST_CASE(an_open_line_shorter_than_its_correlation_is_nearly_of_one_piece) {
  const Eigen::MatrixXd basis = field_basis({1000, 4000, false}, {0, 1000});
  // derived: exp(-(1 / 4)^2 / 2)
  BOOST_TEST(std::abs(basis.row(0).dot(basis.row(1)) - std::exp(-1. / 32)) < 2e-6);
}

BOOST_AUTO_TEST_CASE(made_up_fields_have_the_mean_and_correlation_asked_for) {
  const FieldLine line{15762, 900, true};
  const Eigen::MatrixXd basis = field_basis(line, {100, 1000});
  constexpr int count = 20000;
  double sum = 0, squares = 0, products = 0, product_squares = 0;
  for (std::uint64_t boat = 0; boat < count; ++boat) {
    const Eigen::VectorXd field = basis * unit_normals(boat, basis.cols());
    const double product = field[0] * field[1];
    sum += field[0];
    squares += field[0] * field[0];
    products += product;
    product_squares += product * product;
  }
  BOOST_TEST(believable(deviations(sum, squares, count, 0)));
  BOOST_TEST(believable(
      deviations(products, product_squares, count, std::exp(-0.5))));  // derived
  // derived: squares have the mean 1 and the variance 2
  BOOST_TEST(believable((squares - count) / std::sqrt(2. * count)));
}

BOOST_AUTO_TEST_CASE(fields_cross_levels_upward_as_often_as_rice_says) {
  // published: S. O. Rice, Mathematical analysis of random noise, Bell System Technical
  // Journal 24 (1945): upward crossings of the level u along a length T number on the
  // mean T / (2 pi) sqrt(-r''(0)) exp(-u^2 / 2); here -r''(0) = 1 / l^2. From memory,
  // confirm. Points a twentieth of l apart miss 1 of some 5000 crossings (derived: at
  // u = 0 acos(r(h)) / (2 pi) of them are seen for h / (2 pi l), 1 - h^2 / (12 l^2)),
  // far below the error of 20000 or so
  constexpr double length = 16000, correlation = 400;
  constexpr int points = 800, fields = 3000;
  const Eigen::MatrixXd basis =
      field_basis({length, correlation, true}, even_points(length, points));
  for (const double level : {0., 1., -1.5}) BOOST_TEST_CONTEXT("level " << level) {
      double sum = 0, squares = 0;
      for (std::uint64_t boat = 0; boat < fields; ++boat) {
        const Eigen::VectorXd field = basis * unit_normals(boat, basis.cols());
        int upward = 0;
        for (Eigen::Index i = 0; i < points; ++i)
          upward += field[i] < level && field[(i + 1) % points] >= level;
        sum += upward;
        squares += upward * upward;
      }
      const double expected =
          length / (2 * std::numbers::pi * correlation) * std::exp(-level * level / 2);
      BOOST_TEST(believable(deviations(sum, squares, fields, expected)));
      BOOST_TEST(!believable(deviations(sum, squares, fields, 1.1 * expected)));
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

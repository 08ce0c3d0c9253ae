#include "joint/records/series_change.h"

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_fit.h>

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "tests/joint/records/normal_values.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// What is left of a series about the means of its parts, and the split.
struct Split {
  std::size_t at = 0;
  double squares = std::numeric_limits<double>::max();
};

double squares_about_mean(const std::vector<double>& values,
                          std::size_t first,
                          std::size_t end) {
  double mean = 0;
  for (std::size_t i = first; i < end; ++i)
    mean += values[i] / static_cast<double>(end - first);
  double squares = 0;
  for (std::size_t i = first; i < end; ++i)
    squares += (values[i] - mean) * (values[i] - mean);
  return squares;
}

Split best_split(const std::vector<double>& values) {
  Split best;
  for (std::size_t at = least_part; at + least_part <= values.size(); ++at) {
    const double squares = squares_about_mean(values, 0, at) +
                           squares_about_mean(values, at, values.size());
    if (squares < best.squares) best = {at, squares};
  }
  return best;
}

BOOST_AUTO_TEST_SUITE(series_change)

BOOST_AUTO_TEST_CASE(a_drift_is_that_of_a_line_worked_by_hand) {
  // derived: x -2 ... 2, S_xy = 6 + 2 + 0 + 1 + 8 = 17, S_xx = 10; residuals 0.4 -0.3
  // 0 -0.7 0.6, squares 1.1, s = sqrt(1.1 / 3)
  const auto drift = drift_of({1, 2, 4, 5, 8});
  BOOST_TEST_REQUIRE(drift.has_value());
  BOOST_TEST(drift->slope == 1.7, tolerance(1e-12));
  BOOST_TEST(drift->scatter == std::sqrt(1.1 / 3), tolerance(1e-12));
  BOOST_TEST(drift->slope_error == std::sqrt(1.1 / 3 / 10), tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_drift_agrees_with_another_library) {
  std::mt19937_64 source(7);
  for (const std::size_t count : {3U, 4U, 11U, 200U}) {
    const auto values = normal_values(source, count);
    std::vector<double> x(count);
    for (std::size_t i = 0; i < count; ++i) x[i] = static_cast<double>(i);
    double start = 0, slope = 0, c00 = 0, c01 = 0, c11 = 0, squares = 0;
    gsl_fit_linear(x.data(), 1, values.data(), 1, count, &start, &slope, &c00, &c01,
                   &c11, &squares);
    const auto drift = drift_of(values);
    BOOST_TEST_REQUIRE(drift.has_value());
    BOOST_TEST(drift->slope == slope, tolerance(1e-9));
    BOOST_TEST(drift->slope_error == std::sqrt(c11), tolerance(1e-9));
    const double t = slope / std::sqrt(c11);
    BOOST_TEST(drift->chance ==
                   2 * gsl_cdf_tdist_Q(std::abs(t), static_cast<double>(count - 2)),
               tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(chances_of_t_are_those_of_the_tables) {
  // published: two-sided 5 % and 1 % points of Student's t in any table, to the three
  // decimals they have (from memory, confirm)
  BOOST_TEST(std::abs(student_chance(12.706, 1) - 0.05) < 1e-5);
  BOOST_TEST(std::abs(student_chance(2.228, 10) - 0.05) < 1e-4);
  BOOST_TEST(std::abs(student_chance(-2.763, 28) - 0.01) < 1e-4);
}

BOOST_AUTO_TEST_CASE(series_without_scatter_are_judged_without_dividing_by_it) {
  const std::vector<double> flat(12, 3.3);
  BOOST_TEST(drift_of(flat)->chance == 1.0);
  BOOST_TEST(step_of(flat)->chance == 1.0);
  BOOST_TEST(drift_of({0.1, 0.2, 0.3, 0.4, 0.5})->chance < 1e-12);
  const auto step = step_of({1, 1, 1, 1, 2, 2, 2});
  BOOST_TEST(step->chance < 1e-12);
  BOOST_TEST(step->at == 4U);
}

BOOST_AUTO_TEST_CASE(a_scatter_below_that_of_the_rounding_is_raised_to_it) {
  // derived: no scatter about the line; S_xx = 10, error 0.2 / sqrt(10), t = 1.58114
  const auto drift = drift_of({1, 1.1, 1.2, 1.3, 1.4}, 0.2);
  BOOST_TEST(drift->slope_error == 0.2 / std::sqrt(10.0), tolerance(1e-9));
  BOOST_TEST(drift->chance == student_chance(0.5 * std::sqrt(10.0), 3),
             tolerance(1e-9));
  // derived: 3 and 3 without scatter, error 0.2 sqrt(2 / 3), one split
  const auto step = step_of({1, 1, 1, 2, 2, 2}, 0.2);
  BOOST_TEST(step->chance == student_chance(5 / std::sqrt(2.0 / 3), 4),
             tolerance(1e-9));
  // a scatter above it counts as it is
  const std::vector<double> wide{1, 2, 4, 5, 8, 7};
  BOOST_TEST(drift_of(wide, 0.1)->chance == drift_of(wide)->chance);
  BOOST_TEST(step_of(wide, 0.1)->chance == step_of(wide)->chance);
}

BOOST_AUTO_TEST_CASE(a_series_that_is_too_short_has_no_drift_and_no_step) {
  BOOST_TEST(!drift_of({1, 2}).has_value());
  BOOST_TEST(!step_of({1, 2, 3, 4, 5}).has_value());
}

BOOST_AUTO_TEST_CASE(a_step_is_the_split_that_leaves_least) {
  // property: no other split leaves a smaller sum of squares, each tried in turn
  std::mt19937_64 source(11);
  for (int round = 0; round < 50; ++round) {
    auto values = normal_values(source, 6 + static_cast<std::size_t>(round));
    for (std::size_t i = values.size() / 3; i < values.size(); ++i) values[i] += 1.5;
    const auto step = step_of(values);
    BOOST_TEST_REQUIRE(step.has_value());
    const Split best = best_split(values);
    const auto freedom = static_cast<double>(values.size() - 2);
    BOOST_TEST(step->at == best.at);
    BOOST_TEST(step->scatter == std::sqrt(best.squares / freedom), tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(steady_series_are_told_to_change_as_seldom_as_is_said) {
  // property: of 4000 steady series of 30 a drift is told in 5 % at the level of 5 %;
  // 4 standard errors of a share of 0.05 are 0.0138. A step's chance is a bound: in no
  // more.
  std::mt19937_64 source(640);
  int drifts = 0;
  int steps = 0;
  constexpr int rounds = 4000;
  for (int round = 0; round < rounds; ++round) {
    const auto values = normal_values(source, 30);
    if (drift_of(values)->chance < 0.05) ++drifts;
    if (step_of(values)->chance < 0.05) ++steps;
  }
  BOOST_TEST(std::abs(drifts / double(rounds) - 0.05) < 0.0138);
  BOOST_TEST(steps / double(rounds) < 0.05 + 0.0138);
  BOOST_TEST(steps > 0);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

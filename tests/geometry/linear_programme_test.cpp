#include "geometry/linear_programme.h"

#include <boost/test/unit_test.hpp>
#include <chrono>
#include <cmath>
#include <numbers>

#include "tests/geometry/linear_programme.h"
#include "tests/geometry/random_sides.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// Rows of length about 1, all kept at the origin, in a box about it.
BoundedProgramme random_programme(unsigned seed, Index rows, Index variables) {
  RandomNumbers random(seed);
  BoundedProgramme programme;
  programme.objective.resize(variables);
  programme.rows.resize(rows, variables);
  programme.limits.resize(rows);
  programme.low = Eigen::VectorXd::Constant(variables, -4);
  programme.high = Eigen::VectorXd::Constant(variables, 5);
  for (Index k = 0; k < variables; ++k) programme.objective[k] = random.between(-1, 1);
  for (Index row = 0; row < rows; ++row) {
    programme.limits[row] = random.between(0.5, 3);
    for (Index k = 0; k < variables; ++k)
      programme.rows(row, k) = random.between(-1, 1);
  }
  return programme;
}

/// The same programme, solved by GLPK.
std::optional<double> value_by_glpk(const BoundedProgramme& programme) {
  LinearProgramme other;
  std::vector<int> variables;
  double constant = 0;
  for (Index k = 0; k < programme.objective.size(); ++k) {
    variables.push_back(
        other.number(-programme.objective[k], programme.high[k] - programme.low[k]));
    constant += programme.objective[k] * programme.low[k];
  }
  for (Index row = 0; row < programme.rows.rows(); ++row) {
    LinearSum sum = constant_sum(programme.rows.row(row).dot(programme.low) -
                                 programme.limits[row]);
    for (Index k = 0; k < programme.objective.size(); ++k)
      sum.add(programme.rows(row, k), variables[static_cast<std::size_t>(k)]);
    other.require(sum);
  }
  const auto solution = other.solve_numbers();
  if (!solution) return std::nullopt;
  return constant - solution->front();
}

/// The seating of a lid on an ellipse, linear: shift, turn and five squeezes, with the
/// margin inside a window of 1 to 8 as the last of nine variables.
BoundedProgramme seating_programme(unsigned seed, Index stations, double roughness) {
  RandomNumbers random(seed);
  constexpr Index n = 9;
  BoundedProgramme programme;
  programme.objective = Eigen::VectorXd::Unit(n, n - 1);
  programme.rows.resize(4 * stations, n);
  programme.limits.resize(4 * stations);
  programme.low = Eigen::VectorXd::Constant(n, -10);
  programme.high = Eigen::VectorXd::Constant(n, 10);
  for (Index i = 0; i < 2 * stations; ++i) {
    const double angle = 2 * std::numbers::pi * (0.5 + static_cast<double>(i / 2)) /
                         static_cast<double>(stations);
    // half a step round, so that no slope is 0 but for rounding
    const double x = -std::cos(angle), y = std::sin(angle);
    const Eigen::Vector2d normal = Eigen::Vector2d(x / 3, y).normalized();
    Eigen::VectorXd slope = Eigen::VectorXd::Zero(n);
    slope[0] = normal.x();
    slope[1] = normal.y();
    slope[2] = normal.y() * x - normal.x() * y / 3;
    for (Index k = 0; k < 5; ++k) {
      const double apart = (x - (-0.8 + 0.4 * static_cast<double>(k))) / 0.4;
      slope[3 + k] = std::abs(normal.y()) * std::exp(-apart * apart);
    }
    const double gap = (i % 2 == 0 ? 2.1 : 3.9) + random.between(-roughness, roughness);
    programme.rows.row(2 * i) = -slope.transpose();
    programme.rows.row(2 * i + 1) = slope.transpose();
    programme.rows(2 * i, n - 1) = programme.rows(2 * i + 1, n - 1) = 1;
    programme.limits[2 * i] = gap - 1;
    programme.limits[2 * i + 1] = 8 - gap;
  }
  return programme;
}

/// How far a lid must be squeezed at three places to sit, in two parts of each unknown,
/// above and below 0: stations in pairs whose rows are alike but for 1e-3 to 1e-9.
BoundedProgramme reaching_programme(unsigned seed) {
  RandomNumbers random(seed);
  constexpr Index unknowns = 6, squeezes = 3;
  const Index stations = 60 + seed % 40;
  const double apart = std::pow(10, -3 - static_cast<int>(seed % 7));
  BoundedProgramme programme;
  programme.objective = Eigen::VectorXd::Constant(2 * unknowns + 1, -1e-6);
  programme.objective[2 * unknowns] = -1;
  programme.low = Eigen::VectorXd::Zero(2 * unknowns + 1);
  programme.high = Eigen::VectorXd::Constant(2 * unknowns + 1, 1000);
  programme.rows = Eigen::MatrixXd::Zero(2 * stations + squeezes, 2 * unknowns + 1);
  programme.limits = Eigen::VectorXd::Zero(2 * stations + squeezes);
  Eigen::RowVectorXd slope(unknowns);
  for (Index i = 0; i < stations; ++i) {
    const double along = static_cast<double>(i / 4 * 2) / static_cast<double>(stations);
    const double side = i % 4 < 2 ? 1 : -1;
    slope << std::sin(3 * along) / 3, side, 3 * side * (along - 0.5),
        std::max(0.0, 1 - 4 * std::abs(along - 0.2)),
        std::max(0.0, 1 - 4 * std::abs(along - 0.5)),
        std::max(0.0, 1 - 4 * std::abs(along - 0.8));
    for (double& value : slope) value += apart * random.between(-1, 1);
    const double gap = 3 + random.between(-1, 1) * (seed % 2 == 0 ? 2.4 : 4);
    programme.rows.row(2 * i) << -slope, slope, 0;
    programme.rows.row(2 * i + 1) << slope, -slope, 0;
    programme.limits.segment(2 * i, 2) << gap - 1, 8 - gap;
  }
  for (Index k = 0; k < squeezes; ++k) {
    const Index row = 2 * stations + k, unknown = unknowns - squeezes + k;
    programme.rows(row, unknown) = programme.rows(row, unknowns + unknown) = 1;
    programme.rows(row, 2 * unknowns) = -8;
  }
  return programme;
}

BOOST_AUTO_TEST_SUITE(linear_programme)

BOOST_AUTO_TEST_CASE(the_optimum_of_a_small_programme_is_its_best_corner) {
  // derived: x + 2 y with x + y <= 4, x + 3 y <= 6 in the box 0 to 10: both rows bind
  // at (3, 1), value 5; prices p + q = 1, p + 3 q = 2, so both are 1/2
  BoundedProgramme programme;
  programme.objective = Eigen::Vector2d(1, 2);
  programme.rows = (Eigen::Matrix2d() << 1, 1, 1, 3).finished();
  programme.limits = Eigen::Vector2d(4, 6);
  programme.low = Eigen::Vector2d(0, 0);
  programme.high = Eigen::Vector2d(10, 10);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  BOOST_TEST(best->at[0] == 3, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(best->at[1] == 1, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(best->value == 5, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(best->dual_value == 5, boost::test_tools::tolerance(1e-14));
  BOOST_TEST_REQUIRE(best->prices.rows.size() == 2u);
  for (const RowPrice& row : best->prices.rows)
    BOOST_TEST(row.price == 0.5, boost::test_tools::tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(without_rows_each_variable_stands_at_its_better_bound) {
  BoundedProgramme programme;
  programme.objective = Eigen::Vector3d(2, -1, 0);
  programme.rows.resize(0, 3);
  programme.low = Eigen::Vector3d(-3, -4, 7);
  programme.high = Eigen::Vector3d(5, 6, 7);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  BOOST_TEST(best->value == 2 * 5 + 4);
  BOOST_TEST(best->at[2] == 7);
}

BOOST_AUTO_TEST_CASE(rows_that_are_nearly_alike_make_no_basis_singular) {
  std::size_t possible = 0;
  for (unsigned seed = 1; seed <= 70; ++seed) BOOST_TEST_CONTEXT("seed " << seed) {
      const BoundedProgramme programme = reaching_programme(seed);
      const auto best = optimum(programme);
      const auto other = value_by_glpk(programme);
      BOOST_TEST(best.has_value() == other.has_value());
      if (!best || !other) continue;
      ++possible;
      // GLPK keeps rows to 1e-7
      BOOST_TEST(std::abs(best->value - *other) <= 1e-6 * (1 + std::abs(*other)));
    }
  BOOST_TEST(possible > 0U);
  BOOST_TEST(possible < 70U);
}

BOOST_AUTO_TEST_CASE(random_programmes_have_the_value_that_glpk_finds) {
  for (unsigned seed = 1; seed <= 60; ++seed) BOOST_TEST_CONTEXT("seed " << seed) {
      const BoundedProgramme programme =
          random_programme(seed, 1 + 5 * static_cast<Index>(seed), 1 + seed % 9);
      const auto best = optimum(programme);
      const auto other = value_by_glpk(programme);
      BOOST_TEST_REQUIRE(best.has_value());
      BOOST_TEST_REQUIRE(other.has_value());
      // GLPK keeps its rows within 1e-9, and prices add up
      BOOST_TEST(std::abs(best->value - *other) < 1e-7);
    }
}

BOOST_AUTO_TEST_CASE(seating_programmes_have_the_value_that_glpk_finds) {
  for (const double roughness : {0., 0.001, 0.5, 3.})
    for (unsigned seed = 1; seed <= 5; ++seed)
      BOOST_TEST_CONTEXT("seed " << seed << " roughness " << roughness) {
        const BoundedProgramme programme = seating_programme(seed, 60, roughness);
        const auto best = optimum(programme);
        const auto other = value_by_glpk(programme);
        BOOST_TEST_REQUIRE(best.has_value());
        BOOST_TEST_REQUIRE(other.has_value());
        BOOST_TEST(std::abs(best->value - *other) < 1e-7);
      }
}

BOOST_AUTO_TEST_CASE(no_point_of_a_grid_is_better_than_the_optimum) {
  const BoundedProgramme programme = random_programme(7, 40, 2);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  double greatest = -1e300;
  constexpr int steps = 900;
  for (int i = 0; i <= steps; ++i)
    for (int j = 0; j <= steps; ++j) {
      const Eigen::Vector2d at(-4 + 9. * i / steps, -4 + 9. * j / steps);
      if (((programme.rows * at - programme.limits).array() <= 0).all())
        greatest = std::max(greatest, programme.objective.dot(at));
    }
  BOOST_TEST(greatest <= best->value + 1e-9);
  // property: within a step of the grid of the best corner there is a point that keeps
  // all rows, since the origin does so by 0.5 and more
  BOOST_TEST(greatest > best->value - 0.1);
}

BOOST_AUTO_TEST_CASE(the_proof_holds_when_counted_by_hand) {
  // property: weak duality. With prices p >= 0 of the rows and bounds that weigh
  // together to the objective, no point can be better than their limits, weighed alike
  const BoundedProgramme programme = seating_programme(3, 80, 0.7);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  Eigen::VectorXd sum = best->prices.high - best->prices.low;
  double value =
      best->prices.high.dot(programme.high) - best->prices.low.dot(programme.low);
  for (const RowPrice& row : best->prices.rows) {
    const auto index = static_cast<Index>(row.row);
    BOOST_TEST(row.price > 0);
    sum += row.price * programme.rows.row(index).transpose();
    value += row.price * programme.limits[index];
    BOOST_TEST(std::abs(programme.rows.row(index).dot(best->at) -
                        programme.limits[index]) < 1e-9);
  }
  BOOST_TEST((sum - programme.objective).lpNorm<Eigen::Infinity>() < 1e-9);
  BOOST_TEST(std::abs(value - best->value) < 1e-9);
}

BOOST_AUTO_TEST_CASE(rows_that_shut_each_other_out_are_named) {
  // derived: x <= -1 and -x <= -1 add up to 0 <= -2
  BoundedProgramme programme;
  programme.objective = Eigen::Vector2d(1, 1);
  programme.rows = (Eigen::Matrix<double, 3, 2>() << 0, 1, 1, 0, -1, 0).finished();
  programme.limits = Eigen::Vector3d(1, -1, -1);
  programme.low = Eigen::Vector2d(-9, -9);
  programme.high = Eigen::Vector2d(9, 9);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(!best.has_value());
  BOOST_TEST(best.error().limits_sum == -2, boost::test_tools::tolerance(1e-12));
  BOOST_TEST_REQUIRE(best.error().prices.rows.size() == 2u);
  BOOST_TEST(best.error().prices.rows[0].row == 1u);
  BOOST_TEST(best.error().prices.rows[1].row == 2u);
}

BOOST_AUTO_TEST_CASE(an_impossible_programme_comes_with_weights_that_prove_it) {
  // property: Farkas' lemma. The weights add the left sides up to 0, the limits to less
  std::size_t impossible = 0;
  for (unsigned seed = 1; seed <= 40; ++seed) BOOST_TEST_CONTEXT("seed " << seed) {
      BoundedProgramme programme = random_programme(seed, 60, 4);
      programme.limits.array() -= 1.75;
      const auto best = optimum(programme);
      BOOST_TEST(best.has_value() == value_by_glpk(programme).has_value());
      if (best) continue;
      ++impossible;
      const ProgrammePrices& prices = best.error().prices;
      Eigen::VectorXd sum = prices.high - prices.low;
      double limits = prices.high.dot(programme.high) - prices.low.dot(programme.low);
      for (const RowPrice& row : prices.rows) {
        sum += row.price * programme.rows.row(static_cast<Index>(row.row)).transpose();
        limits += row.price * programme.limits[static_cast<Index>(row.row)];
      }
      BOOST_TEST(sum.lpNorm<Eigen::Infinity>() < 1e-9);
      BOOST_TEST(limits < 0);
    }
  BOOST_TEST(impossible > 5u);
}

BOOST_AUTO_TEST_CASE(a_programme_that_makes_the_simplest_rule_go_round_ends) {
  // published: E. M. L. Beale, Cycling in the dual simplex algorithm, Naval Research
  // Logistics Quarterly 2 (1955), the example; from memory, confirm: greatest
  // 3/4 a - 150 b + 1/50 c - 6 d with 1/4 a - 60 b - 1/25 c + 9 d <= 0,
  // 1/2 a - 90 b - 1/50 c + 3 d <= 0, c <= 1, all >= 0: 1/20 at (1/25, 0, 1, 0)
  BoundedProgramme programme;
  programme.objective = Eigen::Vector4d(0.75, -150, 0.02, -6);
  programme.rows =
      (Eigen::Matrix<double, 2, 4>() << 0.25, -60, -0.04, 9, 0.5, -90, -0.02, 3)
          .finished();
  programme.limits = Eigen::Vector2d(0, 0);
  programme.low = Eigen::Vector4d(0, 0, 0, 0);
  programme.high = Eigen::Vector4d(1000, 1000, 1, 1000);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  BOOST_TEST(best->value == 0.05, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(rows_that_are_all_alike_do_not_stop_it) {
  // derived: sum of x_k <= 1, given 500 times, in the box 0 to 1: the best of
  // x_1 + ... + x_6 is 1
  BoundedProgramme programme;
  programme.objective = Eigen::VectorXd::Ones(6);
  programme.rows = Eigen::MatrixXd::Ones(500, 6);
  programme.limits = Eigen::VectorXd::Ones(500);
  programme.low = Eigen::VectorXd::Zero(6);
  programme.high = Eigen::VectorXd::Ones(6);
  const auto best = optimum(programme);
  BOOST_TEST_REQUIRE(best.has_value());
  BOOST_TEST(best->value == 1, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_seating_of_300_stations_takes_less_than_a_millisecond) {
  // two depths and two limits at each, nine variables; the best of some runs, since
  // another program may take the processor
  for (const double roughness : {0., 0.5}) {
    const BoundedProgramme programme = seating_programme(5, 300, roughness);
    double least_ms = 1e300;
    for (int run = 0; run < 20; ++run) {
      const auto start = std::chrono::steady_clock::now();
      const auto best = optimum(programme);
      const std::chrono::duration<double, std::milli> took =
          std::chrono::steady_clock::now() - start;
      BOOST_TEST_REQUIRE(best.has_value());
      least_ms = std::min(least_ms, took.count());
    }
    BOOST_TEST_MESSAGE("roughness " << roughness << ": " << least_ms << " ms");
    BOOST_TEST(least_ms < 1);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

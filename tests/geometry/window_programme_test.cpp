#include "geometry/window_programme.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <optional>

#include "tests/geometry/linear_programme.h"
#include "tests/geometry/random_sides.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// Where a lid lies on an ellipse: shift, turn and squeezes at places along it.
WindowProgramme ellipse_programme(WindowAim aim, Index stations, Index squeezes) {
  WindowProgramme programme;
  programme.aim = aim;
  programme.least = 1;
  programme.greatest = 8;
  const Index n = 3 + squeezes;
  programme.reaching = aim == WindowAim::Reach ? squeezes : 0;
  programme.most = Eigen::VectorXd::Constant(n, 100);
  programme.most.tail(squeezes).setConstant(4);
  programme.price = Eigen::VectorXd::Constant(n, 1e-6);
  programme.price.tail(squeezes).setConstant(1e-5);
  programme.slopes.resize(2 * stations, n);
  for (Index i = 0; i < 2 * stations; ++i) {
    const double angle = 2 * std::numbers::pi * (0.5 + static_cast<double>(i / 2)) /
                         static_cast<double>(stations);
    const double x = -std::cos(angle), y = std::sin(angle);
    const Eigen::Vector2d normal = Eigen::Vector2d(x / 3, y).normalized();
    programme.slopes.row(i).head(3) << normal.x(), normal.y(),
        normal.y() * x - normal.x() * y / 3;
    for (Index k = 0; k < squeezes; ++k) {
      const double apart = (x - (-0.8 + 0.4 * static_cast<double>(k))) / 0.4;
      programme.slopes(i, 3 + k) = std::abs(normal.y()) * std::exp(-apart * apart);
    }
  }
  return programme;
}

/// Gaps that run on from point to point, now inside the window and now outside.
Eigen::VectorXd uneven_gaps(RandomNumbers& random, Index count, double roughness) {
  Eigen::VectorXd gaps = Eigen::VectorXd::Constant(count, 3);
  for (int wave = 1; wave <= 12; ++wave) {
    const double size = random.between(-roughness, roughness) / wave;
    const double phase = random.between(0, 2 * std::numbers::pi);
    for (Index i = 0; i < count; ++i)
      gaps[i] += size * std::cos(wave * 2 * std::numbers::pi * static_cast<double>(i) /
                                     static_cast<double>(count) +
                                 phase);
  }
  for (double& gap : gaps) gap += random.between(-0.05, 0.05);
  return gaps;
}

/// The aim less what the unknowns cost, by GLPK; nothing if no unknowns have it.
std::optional<double> worth_by_glpk(const WindowProgramme& programme,
                                    const Eigen::VectorXd& gaps) {
  const bool margin = programme.aim == WindowAim::Margin;
  const Index n = programme.slopes.cols();
  LinearProgramme other;
  std::vector<int> up, down;
  for (Index k = 0; k < n; ++k) {
    const bool reaching = k >= n - programme.reaching;
    const double most = programme.most[k] * (reaching ? greatest_reach : 1);
    up.push_back(other.number(programme.price[k], most));
    down.push_back(other.number(programme.price[k], most));
  }
  // the margin is counted from 50 below nothing, for GLPK's numbers are not negative
  const int aim = other.number(margin ? -1 : 1, margin ? 100 : greatest_reach);
  for (Index i = 0; i < gaps.size(); ++i)
    for (const double sign : {-1.0, 1.0}) {
      LinearSum sum = constant_sum(sign < 0 ? programme.least - gaps[i]
                                            : gaps[i] - programme.greatest);
      for (Index k = 0; k < n; ++k) {
        sum.add(sign * programme.slopes(i, k), up[static_cast<std::size_t>(k)]);
        sum.add(-sign * programme.slopes(i, k), down[static_cast<std::size_t>(k)]);
      }
      if (margin) {
        sum.add(1, aim);
        sum.constant -= 50;
      }
      other.require(sum);
    }
  for (Index k = n - programme.reaching; k < n; ++k) {
    LinearSum sum = variable_sum(up[static_cast<std::size_t>(k)]);
    sum.add(1, down[static_cast<std::size_t>(k)]);
    sum.add(-programme.most[k], aim);
    other.require(sum);
  }
  const auto solution = other.solve_numbers();
  if (!solution) return std::nullopt;
  return -solution->front() - (margin ? 50 : 0);
}

double worth(const WindowProgramme& programme, const WindowOptimum& found) {
  const double aim = programme.aim == WindowAim::Margin ? found.aim : -found.aim;
  return aim - programme.price.dot(found.at.cwiseAbs());
}

/// The margin by the values themselves.
double margin_at(const WindowProgramme& programme,
                 const Eigen::VectorXd& gaps,
                 const Eigen::VectorXd& at) {
  const Eigen::VectorXd moved = gaps + programme.slopes * at;
  return std::min(moved.minCoeff() - programme.least,
                  programme.greatest - moved.maxCoeff());
}

BOOST_AUTO_TEST_SUITE(window_programme_suite)

BOOST_AUTO_TEST_CASE(the_best_margin_is_the_one_glpk_finds) {
  RandomNumbers random(11);
  for (const Index squeezes : {0, 1, 5}) {
    const auto programme = ellipse_programme(WindowAim::Margin, 60, squeezes);
    WindowSolver solver(programme, Eigen::VectorXd::Constant(120, 3));
    int afresh = 0;
    for (int boat = 0; boat < 40; ++boat) {
      const Eigen::VectorXd gaps = uneven_gaps(random, 120, boat < 20 ? 1 : 8);
      const WindowOptimum& found = solver.solve(gaps);
      BOOST_TEST_REQUIRE(found.possible);
      afresh += found.afresh;
      // GLPK's own tolerance is 1e-7
      const auto other = worth_by_glpk(programme, gaps);
      BOOST_TEST_REQUIRE(other.has_value());
      BOOST_TEST(std::abs(worth(programme, found) - *other) < 1e-6);
      BOOST_TEST(std::abs(margin_at(programme, gaps, found.at) - found.aim) < 1e-9);
      BOOST_TEST((found.at.cwiseAbs() - programme.most).maxCoeff() <= 1e-9);
    }
    // property: the quick way is the usual one
    BOOST_TEST(afresh < 10);
  }
}

BOOST_AUTO_TEST_CASE(the_least_reach_is_the_one_glpk_finds) {
  RandomNumbers random(12);
  const auto programme = ellipse_programme(WindowAim::Reach, 60, 5);
  WindowSolver solver(programme, Eigen::VectorXd::Constant(120, 3));
  int beyond = 0, impossible = 0, within = 0;
  for (int boat = 0; boat < 80; ++boat) {
    // sides that have gone out by up to 12, three times what a squeeze may take back
    const double opened = random.between(0, 12);
    const Eigen::VectorXd gaps = uneven_gaps(random, 120, boat < 60 ? 2 : 12) -
                                 opened * programme.slopes.rightCols(5).rowwise().sum();
    const WindowOptimum& found = solver.solve(gaps);
    const auto other = worth_by_glpk(programme, gaps);
    BOOST_TEST(found.possible == other.has_value());
    if (!found.possible || !other) {
      ++impossible;
      continue;
    }
    ++(found.aim > 1 ? beyond : within);
    BOOST_TEST(std::abs(worth(programme, found) - *other) < 1e-6);
    BOOST_TEST(margin_at(programme, gaps, found.at) >= -1e-9);
    const double most = found.at.tail(5).cwiseAbs().maxCoeff();
    BOOST_TEST(most == 4 * found.aim, boost::test_tools::tolerance(1e-9));
  }
  BOOST_TEST(within > 5);
  BOOST_TEST(beyond > 5);
  BOOST_TEST(impossible > 5);
}

BOOST_AUTO_TEST_CASE(values_that_are_nearly_alike_are_answered_all_the_same) {
  // derived: every value stands three times, its slopes alike to 1e-9, so that bases
  // are nearly singular; the answer is that of the values standing once
  RandomNumbers random(15);
  for (const WindowAim aim : {WindowAim::Margin, WindowAim::Reach}) {
    const auto once = ellipse_programme(aim, 20, 5);
    auto programme = once;
    programme.slopes = once.slopes.replicate(3, 1);
    for (double& slope : programme.slopes.reshaped())
      slope += random.between(-1e-9, 1e-9);
    WindowSolver solver(programme, Eigen::VectorXd::Constant(120, 3));
    for (int boat = 0; boat < 200; ++boat) {
      const double opened = random.between(0, 12);
      const Eigen::VectorXd gaps = uneven_gaps(random, 40, 3) -
                                   opened * once.slopes.rightCols(5).rowwise().sum();
      const WindowOptimum& found = solver.solve(gaps.replicate(3, 1));
      const auto other = worth_by_glpk(once, gaps);
      BOOST_TEST(found.possible == other.has_value());
      if (found.possible && other)
        BOOST_TEST(std::abs(worth(programme, found) - *other) < 1e-6);
    }
  }
}

BOOST_AUTO_TEST_CASE(answers_sought_afresh_are_the_same) {
  // property: one step is not enough, and the general way says the same as the quick
  // one
  RandomNumbers random(16);
  for (const WindowAim aim : {WindowAim::Margin, WindowAim::Reach}) {
    auto programme = ellipse_programme(aim, 40, 3);
    WindowSolver quick(programme, Eigen::VectorXd::Constant(80, 3));
    programme.quick_steps = 0;
    WindowSolver general(programme, Eigen::VectorXd::Constant(80, 3));
    int impossible = 0;
    for (int boat = 0; boat < 40; ++boat) {
      const Eigen::VectorXd gaps = uneven_gaps(random, 80, boat < 20 ? 2 : 9);
      const WindowOptimum& one = quick.solve(gaps);
      const WindowOptimum& other = general.solve(gaps);
      BOOST_TEST(!one.afresh);
      BOOST_TEST(other.afresh);
      BOOST_TEST_REQUIRE(one.possible == other.possible);
      impossible += !one.possible;
      if (!one.possible) continue;
      BOOST_TEST(std::abs(one.aim - other.aim) < 1e-9);
      BOOST_TEST((one.at - other.at).norm() < 1e-6);
      BOOST_TEST(one.contacts.size() == other.contacts.size());
    }
    BOOST_TEST((impossible > 0) == (aim == WindowAim::Reach));
  }
}

BOOST_AUTO_TEST_CASE(what_holds_the_margin_is_weighed_to_one) {
  // derived: at the optimum a unit more room at every contact is a unit more margin
  RandomNumbers random(13);
  const auto programme = ellipse_programme(WindowAim::Margin, 40, 3);
  WindowSolver solver(programme, Eigen::VectorXd::Constant(80, 3));
  for (int boat = 0; boat < 20; ++boat) {
    const Eigen::VectorXd gaps = uneven_gaps(random, 80, 4);
    const WindowOptimum& found = solver.solve(gaps);
    const Eigen::VectorXd moved = gaps + programme.slopes * found.at;
    double sum = 0;
    for (const WindowContact& contact : found.contacts) {
      const double gap = moved[static_cast<Index>(contact.value)];
      const double room = contact.at_least ? gap - 1 : 8 - gap;
      BOOST_TEST(std::abs(room - found.aim) < 1e-9);
      sum += contact.price;
    }
    BOOST_TEST(sum == 1, boost::test_tools::tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(boats_are_answered_alike_in_any_order) {
  // property: an answer does not depend on the boats before it, to the last bit
  RandomNumbers random(14);
  const auto programme = ellipse_programme(WindowAim::Margin, 40, 5);
  WindowSolver one(programme, Eigen::VectorXd::Constant(80, 3));
  WindowSolver other = one;
  std::vector<Eigen::VectorXd> boats;
  for (int boat = 0; boat < 10; ++boat) boats.push_back(uneven_gaps(random, 80, 5));
  std::vector<double> margins;
  for (const auto& gaps : boats) margins.push_back(one.solve(gaps).aim);
  for (std::size_t i = boats.size(); i-- > 0;)
    BOOST_TEST(other.solve(boats[i]).aim == margins[i]);
}

BOOST_AUTO_TEST_CASE(a_ring_alike_all_round_is_answered_without_going_in_circles) {
  // derived: even gaps of 3 in a window of 1 to 8 leave 2 where nothing is moved, and a
  // move takes at one end what it gives at the other; all stations tie
  const auto programme = ellipse_programme(WindowAim::Margin, 50, 0);
  const Eigen::VectorXd even = Eigen::VectorXd::Constant(100, 3);
  WindowSolver solver(programme, even);
  const WindowOptimum& found = solver.solve(even);
  BOOST_TEST_REQUIRE(found.possible);
  BOOST_TEST(std::abs(found.aim - 2) < 1e-9);
  BOOST_TEST(found.at.norm() < 1e-9);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

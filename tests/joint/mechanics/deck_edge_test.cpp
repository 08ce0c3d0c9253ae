#include "joint/mechanics/deck_edge.h"

#include <Eigen/SparseCholesky>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <vector>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(deck_edge_test)

BOOST_AUTO_TEST_CASE(the_factors_of_a_plate_are_those_of_the_worked_series) {
  const struct {
    double aspect, c_V, c_R;  // derived: Levy's series summed outside this program
    double textbook_V, textbook_R;
  } rows[] = {
      {1, 0.420471, 0.0649647, 0.420, 0.065},
      {1.5, 0.485646, 0.0858638, 0.485, 0.086},
      {2, 0.503354, 0.0925341, 0.503, 0.092},
  };
  for (const auto& row : rows) {
    BOOST_TEST(levy_edge_factor(row.aspect, 0.3) == row.c_V, tolerance(2e-6));
    BOOST_TEST(levy_corner_factor(row.aspect, 0.3) == row.c_R, tolerance(2e-6));
    // S. Timoshenko, Theory of Plates and Shells, table of a plate under even load:
    // from memory, confirm; a unit of its last digit
    BOOST_TEST(std::abs(levy_edge_factor(row.aspect, 0.3) - row.textbook_V) <= 0.001);
    BOOST_TEST(std::abs(levy_corner_factor(row.aspect, 0.3) - row.textbook_R) <= 0.001);
  }
}

BOOST_AUTO_TEST_CASE(a_long_plate_acts_as_a_strip_far_from_its_ends) {
  // property
  BOOST_TEST(levy_edge_factor(20, 0.3) == 0.5, tolerance(1e-10));
  BOOST_TEST(levy_edge_factor(1e9, 0.3) == 0.5, tolerance(1e-10));
  BOOST_TEST(levy_corner_factor(1e9, 0.3) == levy_corner_factor(10, 0.3),
             tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(the_corner_is_the_same_seen_from_either_edge) {
  // property: R is one force, p b^2 c_R(a/b) = p a^2 c_R(b/a)
  for (const double aspect : {1.0, 1.3, 2.0, 3.0})
    BOOST_TEST(levy_corner_factor(aspect, 0.3) ==
                   aspect * aspect * levy_corner_factor(1 / aspect, 0.3),
               tolerance(1e-9));
}

/// A simply supported plate under an even load of 1 by finite differences: two Poisson
/// equations, one for the sum of moments and one for the deflection.
struct PlateByDifferences {
  int across;  ///< steps over b = 1
  int along;   ///< steps over a
  Eigen::VectorXd moment, deflection;

  PlateByDifferences(int across_, int along_) : across(across_), along(along_) {
    const int count = (across - 1) * (along - 1);
    std::vector<Eigen::Triplet<double>> entries;
    for (int i = 1; i < along; ++i)
      for (int j = 1; j < across; ++j) {
        entries.emplace_back(index(i, j), index(i, j), 4);
        if (i > 1) entries.emplace_back(index(i, j), index(i - 1, j), -1);
        if (i < along - 1) entries.emplace_back(index(i, j), index(i + 1, j), -1);
        if (j > 1) entries.emplace_back(index(i, j), index(i, j - 1), -1);
        if (j < across - 1) entries.emplace_back(index(i, j), index(i, j + 1), -1);
      }
    Eigen::SparseMatrix<double> laplacian(count, count);
    laplacian.setFromTriplets(entries.begin(), entries.end());
    const Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> solver(laplacian);
    moment = solver.solve(Eigen::VectorXd::Constant(count, step() * step()));
    deflection = solver.solve(moment * (step() * step()));
  }

  double step() const { return 1. / across; }
  int index(int i, int j) const { return (i - 1) * (across - 1) + j - 1; }

  /// Slope at the edge of length a, from the two points next to it.
  double slope(const Eigen::VectorXd& field, int i) const {
    return (4 * field[index(i, 1)] - field[index(i, 2)]) / (2 * step());
  }
  double edge_factor(double nu) const {
    const int middle = along / 2;
    const double curve =
        (slope(deflection, middle - 1) - 2 * slope(deflection, middle) +
         slope(deflection, middle + 1)) /
        (step() * step());
    return slope(moment, middle) - (1 - nu) * curve;
  }
  double corner_factor(double nu) const {
    return 2 * (1 - nu) * deflection[index(1, 1)] / (step() * step());
  }
};

BOOST_AUTO_TEST_CASE(the_factors_are_those_of_finite_differences) {
  // derived: by the differences above on 48 and 96 steps, carried on to none; at the
  // corner, where the load's mirror image jumps, the step's square is not all there is
  for (const int aspect : {1, 2}) {
    const PlateByDifferences coarse(48, 48 * aspect), fine(96, 96 * aspect);
    const double c_V = (4 * fine.edge_factor(0.3) - coarse.edge_factor(0.3)) / 3;
    const double c_R = (4 * fine.corner_factor(0.3) - coarse.corner_factor(0.3)) / 3;
    BOOST_TEST(levy_edge_factor(aspect, 0.3) == c_V, tolerance(1e-6));
    BOOST_TEST(levy_corner_factor(aspect, 0.3) == c_R, tolerance(3e-4));
  }
}

BOOST_AUTO_TEST_CASE(the_corner_is_held_down_as_by_the_double_series) {
  // derived: Navier's series for the deflection, twisted at the corner:
  // R = 2 (1 - nu) 16/(pi^4 a) sum 1/(m^2/a^2 + n^2)^2 over odd m and n, b = 1; beyond
  // radius N it sums to about pi a/(16 N^2)
  const int last = 2001;
  for (const double aspect : {1.0, 1.5, 2.0}) {
    double sum = 0;
    for (int m = 1; m < last * aspect; m += 2)
      for (int n = 1; n < last; n += 2) {
        const double square = std::pow(m / aspect, 2) + n * n;
        if (square < 1. * last * last) sum += 1 / (square * square);
      }
    const double rest = std::numbers::pi * aspect / 16 / last / last;
    const double c_R =
        2 * 0.7 * 16 / std::pow(std::numbers::pi, 4) / aspect * (sum + rest);
    BOOST_TEST(levy_corner_factor(aspect, 0.3) == c_R, tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_strip_puts_half_its_load_on_the_joint) {
  // derived: 6.96578/1000 x 600/2; 6.96578/1000 x 600^2/12
  PlainWorking work;
  BOOST_TEST(strip_reaction(work, {6.96578, 600}) == 2.08973, tolerance(3e-6));
  BOOST_TEST(clamped_edge_moment(work, {6.96578, 600}) == 208.973, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_square_panel_puts_420_parts_in_a_thousand_on_its_edge) {
  // derived: 0.420471 x 0.005 x 600; 0.0649647 x 0.005 x 600^2
  PlainWorking work;
  BOOST_TEST(panel_reaction(work, {5, 600}, levy_edge_factor(1, 0.3)) == 1.261413,
             tolerance(2e-6));
  BOOST_TEST(corner_hold_down(work, {5, 600}, levy_corner_factor(1, 0.3)) == 116.93646,
             tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking first, second;
  PlainWorking plain;
  BOOST_TEST(strip_reaction(first, {5., 600.}).value() ==
             strip_reaction(plain, {5, 600}));
  BOOST_TEST(panel_reaction(second, {5., 600.}, 0.42).value() ==
             panel_reaction(plain, {5, 600}, 0.42));
  BOOST_TEST(corner_hold_down(first, {5., 600.}, 0.065).value() ==
             corner_hold_down(plain, {5, 600}, 0.065));
  BOOST_TEST(clamped_edge_moment(first, {5., 600.}).value() ==
             clamped_edge_moment(plain, {5, 600}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

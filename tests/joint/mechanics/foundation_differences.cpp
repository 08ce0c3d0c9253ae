#include "tests/joint/mechanics/foundation_differences.h"

#include <Eigen/SparseLU>
#include <cmath>
#include <vector>

namespace sheerlap {

SolvedBeam beam_by_differences(const FoundationBeam<double>& beam,
                               double P,
                               double length,
                               int steps) {
  // unknowns: 2 i is y/y_unit, 2 i + 1 is y''/(beta^2 y_unit), at i steps of u = beta x
  const double beta = std::pow(beam.k_f / (4 * beam.E * beam.I), 0.25);
  const double step = beta * length / steps, square = step * step;
  const double y_unit = P * beta / beam.k_f;
  const int count = 2 * (steps + 1);
  std::vector<Eigen::Triplet<double>> entries;
  Eigen::VectorXd loads = Eigen::VectorXd::Zero(count);
  for (int i = 0; i <= steps; ++i) {
    // beyond a place of symmetry stands the mirror image
    const int before = i == 0 ? 1 : i - 1, after = i == steps ? steps - 1 : i + 1;
    for (int field = 0; field < 2; ++field) {
      const int row = 2 * i + field;
      entries.emplace_back(row, row, -2);
      entries.emplace_back(row, 2 * before + field, 1);
      entries.emplace_back(row, 2 * after + field, 1);
    }
    entries.emplace_back(2 * i, 2 * i + 1, -square);
    entries.emplace_back(2 * i + 1, 2 * i, 4 * square);
  }
  // the load jumps the slope of the moment: E I beta^3 y_unit (slope) = P/2
  loads[1] = 2 * step * P / (2 * beam.E * beam.I * std::pow(beta, 3) * y_unit);
  Eigen::SparseMatrix<double> matrix(count, count);
  matrix.setFromTriplets(entries.begin(), entries.end());
  Eigen::SparseLU<Eigen::SparseMatrix<double>> solver(matrix);
  const Eigen::VectorXd found = solver.solve(loads);
  return {found[0] * y_unit, found[count - 2] * y_unit,
          -found[1] * y_unit * beta * beta * beam.E * beam.I,
          (matrix * found - loads).norm() / loads.norm()};
}

}  // namespace sheerlap

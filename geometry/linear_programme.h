#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <tl/expected.hpp>
#include <vector>

namespace sheerlap {

/// A linear programme whose variables are all bounded: `objective` . x is to be as
/// great as can be, with `rows` x <= `limits` and `low` <= x <= `high`.
///
/// Made for few variables and very many rows.
struct BoundedProgramme {
  Eigen::VectorXd objective;  ///< N
  Eigen::MatrixXd rows;       ///< M x N
  Eigen::VectorXd limits;     ///< M
  Eigen::VectorXd low;        ///< N, finite
  Eigen::VectorXd high;       ///< N, finite, none below its `low`
};

/// What a unit more of a row's limit would add to the objective.
struct RowPrice {
  std::size_t row = 0;
  double price = 0;  ///< > 0
};

/// Weights of rows and bounds: multipliers of the dual.
struct ProgrammePrices {
  std::vector<RowPrice> rows;  ///< those above 0, by row
  Eigen::VectorXd low;         ///< N, of the lower bounds, >= 0
  Eigen::VectorXd high;        ///< N, of the upper bounds, >= 0
};

/// The best x, and the proof that there is none better: prices, none negative, that
/// weigh rows and bounds together to the objective itself, and whose dual value is the
/// value.
struct ProgrammeOptimum {
  Eigen::VectorXd at;
  double value = 0;
  double dual_value = 0;  ///< sum of price x limit; within 1e-9 of `value`
  ProgrammePrices prices;
  std::size_t steps = 0;  ///< of the simplex method
};

/// The proof that no x keeps all rows and bounds: prices, none negative, that weigh the
/// left sides together to 0 and the limits to less than 0.
struct ProgrammeConflict {
  ProgrammePrices prices;
  double limits_sum = 0;  ///< < 0
};

/// The optimum of a programme, or why there is none.
///
/// The simplex method on the dual, whose basis is only N x N, with the lexicographic
/// rule, so that no degenerate programme makes it go round in circles. The optimum is
/// proved before it is handed over: x keeps rows and bounds, no price is negative, both
/// values agree, and a price above 0 stands only on what binds.
///
/// @accuracy  rows and bounds are kept within 1e-9 of the greatest |x| or 1; both
///            values agree within 1e-9 of themselves or 1
/// @source    G. B. Dantzig, A. Orden, P. Wolfe, The generalized simplex method for
///            minimizing a linear form under linear inequality restraints, Pacific J.
///            Math. 5 (1955): the lexicographic rule; from memory, confirm
tl::expected<ProgrammeOptimum, ProgrammeConflict> optimum(
    const BoundedProgramme& programme);

}  // namespace sheerlap

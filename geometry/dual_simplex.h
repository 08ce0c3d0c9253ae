#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/linear_programme.h"

namespace sheerlap {

/// The simplex method on the dual: least limits . y with y >= 0 and the columns
/// (rows of the programme, then its upper, then its lower bounds) weighed by y to the
/// objective.
class DualSimplex {
 public:
  explicit DualSimplex(const BoundedProgramme& programme);

  /// Whether an optimum was found; else the dual runs away along `ray`.
  bool run();
  ProgrammeOptimum optimum() const;
  ProgrammeConflict conflict() const;

 private:
  Eigen::Index rows() const { return scaled_.rows(); }
  Eigen::Index variables() const { return scaled_.cols(); }
  Eigen::VectorXd column(Eigen::Index index) const;
  double limit(Eigen::Index index) const;
  void start();
  void invert();
  bool in_basis(Eigen::Index index) const {
    return std::find(basis_.begin(), basis_.end(), index) != basis_.end();
  }
  std::optional<Eigen::Index> most_missed();
  std::optional<Eigen::Index> leaving(const Eigen::VectorXd& by) const;
  bool lower(Eigen::Index a, Eigen::Index b, const Eigen::VectorXd& by) const;
  void turn(Eigen::Index position, Eigen::Index entering, const Eigen::VectorXd& by);
  void add_price(ProgrammePrices& prices, Eigen::Index index, double price) const;
  ProgrammePrices no_prices() const;

  const BoundedProgramme& programme_;
  Eigen::VectorXd length_;  ///< of each row, 1 for an empty one
  Eigen::MatrixXd scaled_;  ///< rows of length 1
  Eigen::VectorXd limits_;  ///< of the scaled rows
  Eigen::VectorXd first_;   ///< the first basis, a diagonal of 1 and -1
  std::vector<Eigen::Index> basis_;
  Eigen::MatrixXd inverse_;  ///< of the basis
  Eigen::VectorXd prices_;   ///< of the basis
  Eigen::VectorXd at_;       ///< the x at which the basis binds
  Eigen::VectorXd slack_;    ///< of the scaled rows, scratch
  Eigen::Index entering_ = 0;
  Eigen::VectorXd ray_;  ///< how the basis runs away as `entering_` comes in
  std::size_t steps_ = 0;
  std::size_t turns_ = 0;  ///< since the last inversion
};

}  // namespace sheerlap

#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

#include "geometry/linear_programme.h"

namespace sheerlap {

/// What is sought of values in a window.
enum class WindowAim {
  Margin,  ///< the worst value as far inside the window as can be
  Reach,   ///< every value inside it, with the least share of the reach
};

/// Values that are straight in a few unknowns, either way from 0, and should lie in a
/// window.
///
/// With `Margin` each unknown keeps to its `most`. With `Reach` the last `reaching` of
/// them keep to one share of theirs, which may be above 1 and is to be small.
struct WindowProgramme {
  WindowAim aim = WindowAim::Margin;
  Eigen::MatrixXd slopes;     ///< M values x N unknowns
  double least = 0;           ///< of the window
  double greatest = 0;        ///< > `least`
  Eigen::VectorXd most;       ///< N, > 0
  Eigen::VectorXd price;      ///< N, > 0: what a unit of an unknown takes off the aim
  Eigen::Index reaching = 0;  ///< for `Reach`: how many
  int quick_steps = 100;      ///< after which an answer is sought afresh
};

/// The share of the reach is not followed further than this.
inline constexpr double greatest_reach = 10;

/// A value that holds the aim where it is.
struct WindowContact {
  std::size_t value = 0;
  bool at_least = true;  ///< else at the greatest
  double price = 0;      ///< > 0: what a unit more room there would add to the aim
};

struct WindowOptimum {
  bool possible = true;  ///< false: no unknowns have it, and the rest is of no use
  Eigen::VectorXd at;    ///< the unknowns
  double aim = 0;        ///< the margin, or the share of the reach
  std::vector<WindowContact> contacts;
  bool afresh = false;  ///< the quick way was not proved: the general one was gone
};

/// Solves a window programme again and again for other values.
///
/// The dual simplex method, begun each time at the basis that is best for the first
/// values. Each answer is proved by its dual, as `optimum` does; one that is not within
/// the steps given is sought afresh by that. Memory is only taken then.
class WindowSolver {
 public:
  /// @param first  M values; the next ones are best like them
  WindowSolver(WindowProgramme programme, const Eigen::VectorXd& first);

  /// @param values  M
  /// @returns  until the next call
  /// @accuracy  values and bounds are kept within 1e-9, the aim is within 1e-9
  const WindowOptimum& solve(const Eigen::Ref<const Eigen::VectorXd>& values);

  const WindowProgramme& programme() const { return programme_; }

 private:
  using Index = Eigen::Index;
  enum class Outcome { Proved, Impossible, Unproved };

  Index unknowns() const { return programme_.slopes.cols(); }
  Index values() const { return programme_.slopes.rows(); }
  Index variables() const { return 2 * unknowns() + 1; }
  Index bounds_from() const { return 2 * values(); }
  Index shares_from() const { return bounds_from() + 2 * variables(); }
  double margin_weight() const { return programme_.aim == WindowAim::Margin ? 1 : 0; }
  void set_bounds();
  void start();
  Outcome run();
  bool price_out();
  void look_at_values();
  void look_at(double slack, Index index);
  void fill_column(Index index, Eigen::VectorXd& column) const;
  double limit(Index index) const;
  Index leaving() const;
  void turn(Index position);
  bool proved() const;
  bool conflict_proved() const;
  void tell();
  void solve_afresh();
  BoundedProgramme bounded_programme() const;

  WindowProgramme programme_;
  Eigen::MatrixXd rows_;  ///< the slopes, N x M
  Eigen::VectorXd objective_, low_, high_;
  std::vector<Index> first_basis_, basis_;
  Eigen::MatrixXd first_inverse_, inverse_;
  Eigen::VectorXd first_prices_, prices_;
  Eigen::VectorXd values_, moved_;  ///< as given, and with the unknowns
  Eigen::VectorXd at_, limits_, column_, by_, row_, unknowns_;
  mutable Eigen::VectorXd sum_, scratch_;
  Index entering_ = -1;
  double missed_by_ = 0;
  WindowOptimum optimum_;
};

}  // namespace sheerlap

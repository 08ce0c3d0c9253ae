#include "geometry/window_programme.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerlap {
namespace {

using Eigen::Index;

/// A value or a bound that is missed by no more than this is kept.
constexpr double missed = 1e-10;
/// The least element to turn the basis about, as a share of the greatest or of 1.
constexpr double least_pivot = 1e-7;
/// A price may go below 0 by this, where that spares a turn about a small element.
constexpr double below_0 = 1e-12;
/// Both sides of a proof agree within this.
constexpr double proved_within = 1e-9;
/// A margin is not followed further below the window than this.
constexpr double least_margin = -1e4;

}  // namespace

WindowSolver::WindowSolver(WindowProgramme programme, const Eigen::VectorXd& first)
    : programme_(std::move(programme)), rows_(programme_.slopes.transpose()) {
  assert(programme_.least < programme_.greatest);
  assert((programme_.most.array() > 0).all() && (programme_.price.array() > 0).all());
  assert(first.size() == values() && programme_.reaching <= unknowns());
  set_bounds();
  const Index n = variables();
  for (auto* vector : {&at_, &limits_, &column_, &by_, &row_, &sum_, &scratch_})
    vector->resize(n);
  values_ = first;
  moved_.resize(values());
  unknowns_.resize(unknowns());
  optimum_.at.resize(unknowns());
  optimum_.contacts.reserve(static_cast<std::size_t>(n));
  start();
  basis_ = first_basis_;
  const Outcome outcome = run();
  if (outcome != Outcome::Proved) return;
  first_basis_ = basis_;
  first_inverse_ = inverse_;
  first_prices_ = prices_;
}

/// The variables are each unknown's part above 0, its part below 0, and the aim.
void WindowSolver::set_bounds() {
  const Index n = unknowns();
  const bool margin = programme_.aim == WindowAim::Margin;
  objective_.resize(variables());
  objective_ << -programme_.price, -programme_.price, margin ? 1.0 : -1.0;
  low_ = Eigen::VectorXd::Zero(variables());
  high_.resize(variables());
  Eigen::VectorXd most = programme_.most;
  if (!margin) most.tail(programme_.reaching) *= greatest_reach;
  const double width = programme_.greatest - programme_.least;
  high_ << most, most, margin ? width / 2 : greatest_reach;
  low_[2 * n] = margin ? least_margin : 0;
}

/// The first basis: each variable at the bound its objective asks for.
void WindowSolver::start() {
  const Index n = variables();
  first_basis_.clear();
  first_inverse_ = Eigen::MatrixXd::Zero(n, n);
  first_prices_ = objective_.cwiseAbs();
  for (Index k = 0; k < n; ++k) {
    const bool high = objective_[k] > 0;
    first_inverse_(k, k) = high ? 1 : -1;
    first_basis_.push_back(bounds_from() + (high ? k : n + k));
  }
}

void WindowSolver::fill_column(Index index, Eigen::VectorXd& column) const {
  const Index n = unknowns();
  const Index count = values();
  if (index < bounds_from()) {
    const bool low = index < count;
    const double sign = low ? 1 : -1;
    const auto slopes = rows_.col(low ? index : index - count);
    column.head(n) = -sign * slopes;
    column.segment(n, n) = sign * slopes;
    column[2 * n] = margin_weight();
    return;
  }
  column.setZero();
  if (index < shares_from()) {
    const Index bound = index - bounds_from();
    const bool high = bound < variables();
    column[high ? bound : bound - variables()] = high ? 1 : -1;
    return;
  }
  const Index unknown = n - programme_.reaching + index - shares_from();
  column[unknown] = 1;
  column[n + unknown] = 1;
  column[2 * n] = -programme_.most[unknown];
}

double WindowSolver::limit(Index index) const {
  const Index count = values();
  if (index < count) return values_[index] - programme_.least;
  if (index < bounds_from()) return programme_.greatest - values_[index - count];
  if (index >= shares_from()) return 0;
  const Index bound = index - bounds_from();
  return bound < variables() ? high_[bound] : -low_[bound - variables()];
}

void WindowSolver::look_at(double slack, Index index) {
  if (!(slack < missed_by_)) return;
  missed_by_ = slack;
  entering_ = index;
}

void WindowSolver::look_at_values() {
  const Index n = unknowns();
  moved_ = values_;
  for (Index k = 0; k < n; ++k)
    if (unknowns_[k] != 0) moved_.noalias() += unknowns_[k] * programme_.slopes.col(k);
  const double room = margin_weight() * at_[2 * n];
  const double least = moved_.minCoeff();
  const double greatest = moved_.maxCoeff();
  const double under = least - programme_.least - room;
  const double over = programme_.greatest - greatest - room;
  const double worse = std::min(under, over);
  if (!(worse < missed_by_)) return;
  const double sought = under <= over ? least : greatest;
  const auto found = std::find(moved_.begin(), moved_.end(), sought);
  const Index value = found - moved_.begin();
  look_at(worse, under <= over ? value : values() + value);
}

/// Finds what is missed by most; false if all is kept.
bool WindowSolver::price_out() {
  const Index n = unknowns();
  missed_by_ = -missed;
  entering_ = -1;
  unknowns_ = at_.head(n) - at_.segment(n, n);
  look_at_values();
  for (Index k = 0; k < variables(); ++k) {
    look_at(high_[k] - at_[k], bounds_from() + k);
    look_at(at_[k] - low_[k], bounds_from() + variables() + k);
  }
  if (programme_.aim == WindowAim::Margin) return entering_ >= 0;
  for (Index j = 0; j < programme_.reaching; ++j) {
    const Index unknown = n - programme_.reaching + j;
    look_at(programme_.most[unknown] * at_[2 * n] - at_[unknown] - at_[n + unknown],
            shares_from() + j);
  }
  return entering_ >= 0;
}

/// The position of the basis whose price is the first to reach 0 as the new one comes
/// in, -1 if none does. Of those that reach it before any is below 0 by more than
/// rounding it is the one with the greatest element, for the sake of the next ones.
Index WindowSolver::leaving() const {
  const double pivot = least_pivot * std::max(1.0, by_.lpNorm<Eigen::Infinity>());
  double furthest = std::numeric_limits<double>::infinity();
  for (Index k = 0; k < variables(); ++k)
    if (by_[k] > pivot)
      furthest = std::min(furthest, (std::max(prices_[k], 0.0) + below_0) / by_[k]);
  Index found = -1;
  for (Index k = 0; k < variables(); ++k) {
    if (!(by_[k] > pivot) || std::max(prices_[k], 0.0) > furthest * by_[k]) continue;
    if (found < 0 || by_[k] > by_[found]) found = k;
  }
  return found;
}

void WindowSolver::turn(Index position) {
  const double slack = limit(entering_) - column_.dot(at_);
  row_ = inverse_.row(position).transpose() / by_[position];
  at_.noalias() += slack * row_;
  const double price = std::max(prices_[position], 0.0) / by_[position];
  prices_.noalias() -= price * by_;
  prices_[position] = price;
  for (Index k = 0; k < variables(); ++k) inverse_.col(k).noalias() -= row_[k] * by_;
  inverse_.row(position) = row_.transpose();
  basis_[static_cast<std::size_t>(position)] = entering_;
}

/// Whether the prices weigh what binds together to the objective, none is below 0, and
/// both values agree; that nothing is missed was seen as the unknowns were priced out.
bool WindowSolver::proved() const {
  sum_ = objective_;
  double dual = 0;
  for (Index k = 0; k < variables(); ++k) {
    if (!(prices_[k] >= -proved_within)) return false;
    const Index index = basis_[static_cast<std::size_t>(k)];
    fill_column(index, scratch_);
    sum_.noalias() -= prices_[k] * scratch_;
    dual += prices_[k] * limit(index);
  }
  return sum_.lpNorm<Eigen::Infinity>() <= proved_within &&
         std::abs(dual - objective_.dot(at_)) <= proved_within;
}

/// Whether the new one and what it cannot push out weigh to nothing, with limits that
/// weigh to less than nothing; what is left of the weighing counts as the most that it
/// can come to within the bounds.
bool WindowSolver::conflict_proved() const {
  sum_ = column_;
  double limits = limit(entering_);
  double size = 1 + std::abs(limits);
  for (Index k = 0; k < variables(); ++k) {
    const double weight = std::max(-by_[k], 0.0);
    const Index index = basis_[static_cast<std::size_t>(k)];
    fill_column(index, scratch_);
    sum_.noalias() += weight * scratch_;
    limits += weight * limit(index);
    size += weight * std::abs(limit(index));
  }
  const double left = sum_.cwiseAbs().dot(low_.cwiseAbs().cwiseMax(high_.cwiseAbs()));
  return limits + left < -proved_within * size;
}

WindowSolver::Outcome WindowSolver::run() {
  basis_ = first_basis_;
  inverse_ = first_inverse_;
  prices_ = first_prices_;
  for (Index k = 0; k < variables(); ++k)
    limits_[k] = limit(basis_[static_cast<std::size_t>(k)]);
  at_.noalias() = inverse_.transpose() * limits_;
  for (int step = 0; step < programme_.quick_steps; ++step) {
    if (!price_out()) return proved() ? Outcome::Proved : Outcome::Unproved;
    fill_column(entering_, column_);
    by_.noalias() = inverse_ * column_;
    const Index position = leaving();
    if (position < 0)
      return conflict_proved() ? Outcome::Impossible : Outcome::Unproved;
    turn(position);
  }
  return Outcome::Unproved;
}

void WindowSolver::tell() {
  optimum_.at = unknowns_;
  optimum_.aim = at_[2 * unknowns()];
  optimum_.contacts.clear();
  for (Index k = 0; k < variables(); ++k) {
    const Index index = basis_[static_cast<std::size_t>(k)];
    if (index >= bounds_from() || !(prices_[k] > 0)) continue;
    const bool low = index < values();
    optimum_.contacts.push_back(
        {static_cast<std::size_t>(low ? index : index - values()), low, prices_[k]});
  }
}

const WindowOptimum& WindowSolver::solve(
    const Eigen::Ref<const Eigen::VectorXd>& values) {
  values_ = values;
  optimum_.afresh = false;
  const Outcome outcome = run();
  optimum_.possible = outcome == Outcome::Proved;
  if (outcome == Outcome::Proved) tell();
  if (outcome == Outcome::Unproved) solve_afresh();
  return optimum_;
}

BoundedProgramme WindowSolver::bounded_programme() const {
  const Index n = unknowns();
  const Index shares = programme_.aim == WindowAim::Reach ? programme_.reaching : 0;
  BoundedProgramme general{objective_, {}, {}, low_, high_};
  general.rows.resize(bounds_from() + shares, variables());
  general.limits.resize(bounds_from() + shares);
  for (Index row = 0; row < general.rows.rows(); ++row) {
    const Index index = row < bounds_from() ? row : row - bounds_from() + shares_from();
    fill_column(index, scratch_);
    general.rows.row(row) = scratch_.transpose();
    general.limits[row] = limit(index);
  }
  assert(general.rows.cols() == 2 * n + 1);
  return general;
}

void WindowSolver::solve_afresh() {
  const auto found = sheerlap::optimum(bounded_programme());
  const Index n = unknowns();
  optimum_.afresh = true;
  optimum_.possible = found.has_value();
  optimum_.contacts.clear();
  if (!found) return;
  optimum_.at = found->at.head(n) - found->at.segment(n, n);
  optimum_.aim = found->at[2 * n];
  const auto count = static_cast<std::size_t>(values());
  for (const RowPrice& row : found->prices.rows)
    if (row.row < 2 * count)
      optimum_.contacts.push_back({row.row % count, row.row < count, row.price});
}

}  // namespace sheerlap

#include "geometry/dual_simplex.h"

#include <Eigen/LU>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "geometry/programme_proof.h"

namespace sheerlap {
namespace {

/// How far a row of length 1 may be missed, as a share of the greatest |x| or 1.
constexpr double missed = 1e-11;
/// What that grows to, at most, where rounding makes steps mount up.
constexpr double widest = 5e-10;
/// The least element of a unit column to turn the basis about.
constexpr double least_pivot = 1e-9;
/// An element below this may be what rounding left of a 0 since the last inversion: a
/// turn about it would make the basis singular.
constexpr double doubtful_pivot = 1e-5;
/// And one below so many roundings of the inverse's greatest element is a 0, whenever
/// it was inverted.
constexpr double roundings = 100 * std::numeric_limits<double>::epsilon();
/// Ratios no further apart, as a share of the greatest price, are alike.
constexpr double alike = 1e-13;
/// Rows missed by as much but for this share of the greatest |x| or 1 are missed alike.
constexpr double alike_missed = 1e-10;
/// The basis is inverted afresh after so many turns.
constexpr std::size_t turns_between_inversions = 40;

void by_row(ProgrammePrices& prices) {
  std::sort(prices.rows.begin(), prices.rows.end(),
            [](const RowPrice& a, const RowPrice& b) { return a.row < b.row; });
}

}  // namespace

DualSimplex::DualSimplex(const BoundedProgramme& programme)
    : programme_(programme), length_(programme.rows.rowwise().norm()) {
  const Eigen::Index n = programme.objective.size();
  assert(programme.rows.cols() == n && programme.low.size() == n);
  assert(programme.limits.size() == programme.rows.rows());
  assert(programme.high.size() == n);
  assert((programme.low.array() <= programme.high.array()).all());
  assert(programme.low.allFinite() && programme.high.allFinite());
  for (double& length : length_)
    if (!(length > 0)) length = 1;
  scaled_ = length_.cwiseInverse().asDiagonal() * programme.rows;
  limits_ = programme.limits.cwiseQuotient(length_);
  start();
}

Eigen::VectorXd DualSimplex::column(Eigen::Index index) const {
  if (index < rows()) return scaled_.row(index).transpose();
  const Eigen::Index bound = index - rows();
  const bool high = bound < variables();
  return (high ? 1.0 : -1.0) *
         Eigen::VectorXd::Unit(variables(), high ? bound : bound - variables());
}

double DualSimplex::limit(Eigen::Index index) const {
  if (index < rows()) return limits_[index];
  const Eigen::Index bound = index - rows();
  return bound < variables() ? programme_.high[bound]
                             : -programme_.low[bound - variables()];
}

/// Each variable at the bound that its objective asks for.
void DualSimplex::start() {
  const Eigen::Index n = variables();
  first_.resize(n);
  for (Eigen::Index k = 0; k < n; ++k) {
    const bool high = programme_.objective[k] > 0;
    first_[k] = high ? 1 : -1;
    basis_.push_back(rows() + (high ? k : n + k));
  }
  invert();
}

void DualSimplex::invert() {
  const Eigen::Index n = variables();
  Eigen::MatrixXd columns(n, n);
  Eigen::VectorXd limits(n);
  for (Eigen::Index k = 0; k < n; ++k) {
    const Eigen::Index index = basis_[static_cast<std::size_t>(k)];
    columns.col(k) = column(index);
    limits[k] = limit(index);
  }
  inverse_ = columns.partialPivLu().inverse();
  prices_ = inverse_ * programme_.objective;
  at_ = inverse_.transpose() * limits;
  turns_ = 0;
}

/// The row or bound outside the basis that `at_` misses by most; nothing if it keeps
/// them all. What is missed by rounding only widens as steps mount up.
std::optional<Eigen::Index> DualSimplex::most_missed() {
  const Eigen::Index n = variables();
  const double widened =
      missed * (1 + static_cast<double>(steps_) / (10 * static_cast<double>(n)));
  double least =
      -std::min(widened, widest) * std::max(1.0, at_.lpNorm<Eigen::Infinity>());
  std::optional<Eigen::Index> found;
  const auto look = [&](double slack, Eigen::Index index) {
    if (slack < least) {
      least = slack;
      found = index;
    }
  };
  if (rows() > 0) {
    slack_.noalias() = limits_ - scaled_ * at_;
    for (const Eigen::Index index : basis_)
      if (index < rows()) slack_[index] = 0;
    // the first of those missed alike, whichever of them rounding makes the least
    const double worst = slack_.minCoeff();
    const double close =
        std::min(worst + alike_missed * std::max(1.0, at_.lpNorm<Eigen::Infinity>()),
                 (worst + least) / 2);
    Eigen::Index row = 0;
    while (worst < least && slack_[row] > close) ++row;
    look(slack_[row], row);
  }
  for (Eigen::Index k = 0; k < n; ++k) {
    if (!in_basis(rows() + k)) look(programme_.high[k] - at_[k], rows() + k);
    if (!in_basis(rows() + n + k)) look(at_[k] - programme_.low[k], rows() + n + k);
  }
  return found;
}

/// Whether of two positions that give way alike the first does so before the other if
/// the objective is moved a little, along the first basis, by amounts each of which is
/// nothing beside the one before.
bool DualSimplex::lower(Eigen::Index a,
                        Eigen::Index b,
                        const Eigen::VectorXd& by) const {
  for (Eigen::Index k = 0; k < variables(); ++k) {
    const double at_a = inverse_(a, k) * first_[k] / by[a];
    const double at_b = inverse_(b, k) * first_[k] / by[b];
    if (std::abs(at_a - at_b) > alike * (std::abs(at_a) + std::abs(at_b)))
      return at_a < at_b;
  }
  return false;
}

/// The position of the basis that gives way first as prices go down by `by`.
std::optional<Eigen::Index> DualSimplex::leaving(const Eigen::VectorXd& by) const {
  const double close = alike * std::max(1.0, prices_.lpNorm<Eigen::Infinity>());
  const double least =
      std::max(least_pivot, roundings * inverse_.lpNorm<Eigen::Infinity>());
  std::optional<Eigen::Index> first;
  for (Eigen::Index k = 0; k < variables(); ++k) {
    if (!(by[k] > least)) continue;
    if (!first) {
      first = k;
      continue;
    }
    const double difference =
        std::max(prices_[k], 0.0) * by[*first] - std::max(prices_[*first], 0.0) * by[k];
    const bool tied = std::abs(difference) <= close;
    if (tied ? lower(k, *first, by) : difference < 0) first = k;
  }
  return first;
}

void DualSimplex::turn(Eigen::Index position,
                       Eigen::Index entering,
                       const Eigen::VectorXd& by) {
  const double slack = limit(entering) - column(entering).dot(at_);
  const Eigen::VectorXd row = inverse_.row(position).transpose() / by[position];
  at_ += slack * row;
  const double price = std::max(prices_[position], 0.0) / by[position];
  prices_ -= price * by;
  prices_[position] = price;
  inverse_ -= by * row.transpose();
  inverse_.row(position) = row.transpose();
  basis_[static_cast<std::size_t>(position)] = entering;
  ++steps_;
  if (++turns_ >= turns_between_inversions) invert();
}

bool DualSimplex::run() {
  // far above what any programme takes: the rule allows no basis twice
  const auto most_steps = static_cast<std::size_t>(1000 + 50 * (rows() + variables()));
  while (true) {
    const auto entering = most_missed();
    if (!entering && turns_ == 0) return true;
    if (!entering) {
      invert();
      continue;
    }
    const Eigen::VectorXd by = inverse_ * column(*entering);
    const auto position = leaving(by);
    if (turns_ > 0 && (!position || by[*position] < doubtful_pivot)) {
      invert();
      continue;
    }
    if (!position) {
      entering_ = *entering;
      ray_ = by;
      return false;
    }
    turn(*position, *entering, by);
    assert(steps_ < most_steps);
  }
}

ProgrammePrices DualSimplex::no_prices() const {
  return {{}, Eigen::VectorXd::Zero(variables()), Eigen::VectorXd::Zero(variables())};
}

void DualSimplex::add_price(ProgrammePrices& prices,
                            Eigen::Index index,
                            double price) const {
  if (!(price > 0)) return;
  const Eigen::Index bound = index - rows();
  if (bound < 0)
    prices.rows.push_back({static_cast<std::size_t>(index), price / length_[index]});
  else if (bound < variables())
    prices.high[bound] += price;
  else
    prices.low[bound - variables()] += price;
}

ProgrammeOptimum DualSimplex::optimum() const {
  ProgrammeOptimum found;
  found.at = at_;
  found.value = programme_.objective.dot(at_);
  found.steps = steps_;
  found.prices = no_prices();
  for (Eigen::Index k = 0; k < variables(); ++k) {
    const Eigen::Index index = basis_[static_cast<std::size_t>(k)];
    found.dual_value += prices_[k] * limit(index);
    add_price(found.prices, index, prices_[k]);
  }
  by_row(found.prices);
  assert_proved(programme_, found);
  return found;
}

ProgrammeConflict DualSimplex::conflict() const {
  ProgrammeConflict found{no_prices(), limit(entering_)};
  add_price(found.prices, entering_, 1);
  for (Eigen::Index k = 0; k < variables(); ++k) {
    const Eigen::Index index = basis_[static_cast<std::size_t>(k)];
    const double weight = std::max(-ray_[k], 0.0);
    found.limits_sum += weight * limit(index);
    add_price(found.prices, index, weight);
  }
  by_row(found.prices);
  assert(found.limits_sum < 0);
  return found;
}

}  // namespace sheerlap

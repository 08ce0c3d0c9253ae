#include "geometry/programme_proof.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

constexpr double proved = 1e-9;

double size_of(const Eigen::VectorXd& values) {
  return std::max(1.0, values.lpNorm<Eigen::Infinity>());
}

/// Whether x keeps every row and bound.
[[maybe_unused]] bool kept(const BoundedProgramme& programme,
                           const Eigen::VectorXd& at) {
  const double most = proved * size_of(at);
  const bool in_box = (programme.high - at).minCoeff() >= -most &&
                      (at - programme.low).minCoeff() >= -most;
  if (programme.rows.rows() == 0) return in_box;
  const Eigen::VectorXd room = programme.limits - programme.rows * at +
                               most * programme.rows.rowwise().norm().cwiseMax(1e-300);
  return in_box && room.minCoeff() >= 0;
}

/// What the prices weigh together to.
struct Weighed {
  Eigen::VectorXd sum;  ///< of the left sides
  double value = 0;     ///< of the limits
  double size = 1;      ///< of the limits, signs aside
  double unbound = 0;   ///< of what is left of each limit
};

Weighed weighed(const BoundedProgramme& programme, const ProgrammeOptimum& optimum) {
  const ProgrammePrices& prices = optimum.prices;
  Weighed all;
  all.sum = prices.high - prices.low;
  all.value = prices.high.dot(programme.high) - prices.low.dot(programme.low);
  all.size += prices.high.dot(programme.high.cwiseAbs()) +
              prices.low.dot(programme.low.cwiseAbs());
  all.unbound = prices.high.dot(programme.high - optimum.at) +
                prices.low.dot(optimum.at - programme.low);
  for (const RowPrice& row : prices.rows) {
    const auto index = static_cast<Eigen::Index>(row.row);
    const double limit = programme.limits[index];
    all.sum += row.price * programme.rows.row(index).transpose();
    all.value += row.price * limit;
    all.size += row.price * std::abs(limit);
    all.unbound += row.price * (limit - programme.rows.row(index).dot(optimum.at));
  }
  return all;
}

}  // namespace

void assert_proved(const BoundedProgramme& programme, const ProgrammeOptimum& optimum) {
  const Weighed all = weighed(programme, optimum);
  assert(kept(programme, optimum.at));
  assert((all.sum - programme.objective).lpNorm<Eigen::Infinity>() <=
         proved * size_of(programme.objective));
  assert(std::abs(all.value - optimum.value) <= proved * all.size);
  assert(std::abs(all.unbound) <= proved * all.size);
}

}  // namespace sheerlap

#include "joint/seating_programme.h"

#include <algorithm>
#include <cassert>

#include "geometry/linear_programme.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// What a mm of the lid's movement must gain of margin to be made; our choice, no
/// source. It decides between seatings whose margins are alike.
constexpr double move_price = 1e-6;
/// Force on the hull is worth avoiding: a mm of squeeze counts as so many of the lid's.
/// Our choice, no source.
constexpr double squeeze_weight = 10;

/// The worthiest seating of the gaps as their slopes have it. Each unknown is the
/// difference of two variables, neither negative; the last one is the margin. Rows 2 i
/// and 2 i + 1 keep the gap at point i from the least and from the greatest by the
/// margin; those after them keep the box.
BoundedProgramme seating_programme(const SeatingTask& task,
                                   const SeatingState& state,
                                   const SeatingBox& box) {
  const Index n = state.at.size();
  const Index count = state.gaps.size();
  BoundedProgramme programme;
  programme.objective.resize(2 * n + 1);
  programme.objective << -seating_prices(n), -seating_prices(n), 1;
  programme.low = Eigen::VectorXd::Zero(2 * n + 1);
  programme.low[2 * n] = state.margin - 1;
  programme.high.resize(2 * n + 1);
  programme.high << box.high.cwiseMax(0.0), (-box.low).cwiseMax(0.0),
      (task.gap_max_mm - task.gap_min_mm) / 2;
  programme.rows = Eigen::MatrixXd::Zero(2 * count + 2 * n, 2 * n + 1);
  programme.limits.resize(2 * count + 2 * n);
  const Eigen::VectorXd at_zero = state.gaps - state.slopes * state.at;
  for (Index i = 0; i < count; ++i) {
    programme.rows.row(2 * i) << -state.slopes.row(i), state.slopes.row(i), 1.0;
    programme.rows.row(2 * i + 1) << state.slopes.row(i), -state.slopes.row(i), 1.0;
    programme.limits[2 * i] = at_zero[i] - task.gap_min_mm;
    programme.limits[2 * i + 1] = task.gap_max_mm - at_zero[i];
  }
  const auto one = Eigen::MatrixXd::Identity(n, n);
  programme.rows.block(2 * count, 0, n, n) = one;
  programme.rows.block(2 * count, n, n, n) = -one;
  programme.rows.block(2 * count + n, 0, n, n) = -one;
  programme.rows.block(2 * count + n, n, n, n) = one;
  programme.limits.tail(2 * n) << box.high, -box.low;
  return programme;
}

/// The price of each spreader's limit: of the rows and of the bounds that keep it.
/// @param rows  of the gaps; those of the limits come after them
std::vector<double> limit_prices(const SeatingTask& task,
                                 const ProgrammePrices& prices,
                                 std::size_t rows) {
  const std::size_t first = static_cast<std::size_t>(first_squeeze);
  const std::size_t count = task.squeeze_most_mm.size();
  const std::size_t n = first + count;
  std::vector<double> result(count, 0.0);
  const auto add = [&](std::size_t unknown, double price) {
    if (unknown % n >= first) result[unknown % n - first] += price;
  };
  for (const RowPrice& row : prices.rows)
    if (row.row >= rows) add(row.row - rows, row.price);
  for (std::size_t variable = 0; variable < 2 * n; ++variable)
    add(variable, prices.high[static_cast<Index>(variable)]);
  return result;
}

}  // namespace

Eigen::VectorXd seating_prices(Index unknowns) {
  Eigen::VectorXd prices = Eigen::VectorXd::Constant(unknowns, move_price);
  prices.tail(unknowns - first_squeeze) *= squeeze_weight;
  return prices;
}

double margin_of(double gap, const SeatingTask& task) {
  return std::min(gap - task.gap_min_mm, task.gap_max_mm - gap);
}

std::optional<SeatingState> state_at(const SeatingTask& task,
                                     const LapPoints& points,
                                     const LidUnknowns& unknowns) {
  const auto count = static_cast<Index>(points.size());
  SeatingState state{unknowns, points, Eigen::VectorXd(count), {}, 1e300};
  state.slopes.resize(count, unknowns.size());
  for (Index i = 0; i < count; ++i) {
    const auto gap = lid_gap(task.points[points[static_cast<std::size_t>(i)]],
                             *task.lip, task.datum, unknowns);
    if (!gap) return std::nullopt;
    state.gaps[i] = gap->gap_mm;
    state.slopes.row(i) = gap->slope.transpose();
    state.margin = std::min(state.margin, margin_of(gap->gap_mm, task));
  }
  return state;
}

SeatingBox whole_box(const SeatingTask& task) {
  const auto count = first_squeeze + static_cast<Index>(task.squeeze_most_mm.size());
  Eigen::VectorXd most = Eigen::VectorXd::Constant(count, furthest_mm);
  for (Index k = first_squeeze; k < count; ++k)
    most[k] = task.squeeze_most_mm[static_cast<std::size_t>(k - first_squeeze)];
  return {-most, most};
}

SeatingBox within_reach(const SeatingBox& whole, const LidUnknowns& at, double reach) {
  return {whole.low.cwiseMax((at.array() - reach).matrix()),
          whole.high.cwiseMin((at.array() + reach).matrix())};
}

double worth(double margin, const LidUnknowns& at) {
  return margin - seating_prices(at.size()).dot(at.cwiseAbs());
}

SeatingProposal proposal(const SeatingTask& task,
                         const SeatingState& state,
                         const SeatingBox& box) {
  const auto best = optimum(seating_programme(task, state, box));
  // the present unknowns keep every row with the present margin
  assert(best.has_value());
  const Index n = state.at.size();
  const std::size_t rows = 2 * state.points.size();
  SeatingProposal next{best->at.head(n) - best->at.segment(n, n),
                       best->at[2 * n],
                       {},
                       limit_prices(task, best->prices, rows)};
  for (const RowPrice& row : best->prices.rows)
    if (row.row < rows)
      next.contacts.push_back({state.points[row.row / 2], row.row % 2 == 0, row.price});
  return next;
}

}  // namespace sheerlap

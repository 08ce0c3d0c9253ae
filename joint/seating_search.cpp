#include "joint/seating_search.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

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
/// How far the first programme may reach.
constexpr double first_reach_mm = 20;
/// A move smaller than this ends the search.
constexpr double still_mm = 1e-8;
/// What the true margin may fall short by at first; it is halved at each step.
constexpr double first_shortfall_mm = 0.01;
constexpr int most_steps = 200;

/// The true gaps at some unknowns.
struct State {
  LidUnknowns at;
  Eigen::VectorXd gaps;
  Eigen::MatrixXd slopes;  ///< one row a point
  double margin = 0;
};

double margin_of(double gap, const SeatingTask& task) {
  return std::min(gap - task.gap_min_mm, task.gap_max_mm - gap);
}

std::optional<State> state_at(const SeatingTask& task, const LidUnknowns& unknowns) {
  const auto count = static_cast<Index>(task.points.size());
  State state{unknowns, Eigen::VectorXd(count), {}, 1e300};
  state.slopes.resize(count, unknowns.size());
  for (Index i = 0; i < count; ++i) {
    const auto gap = lid_gap(task.points[static_cast<std::size_t>(i)], *task.lip,
                             task.datum, unknowns);
    if (!gap) return std::nullopt;
    state.gaps[i] = gap->gap_mm;
    state.slopes.row(i) = gap->slope.transpose();
    state.margin = std::min(state.margin, margin_of(gap->gap_mm, task));
  }
  return state;
}

/// The ranges of the unknowns.
struct Box {
  Eigen::VectorXd low, high;
};

Box whole_box(const SeatingTask& task) {
  const auto count = first_squeeze + static_cast<Index>(task.squeeze_most_mm.size());
  Eigen::VectorXd most = Eigen::VectorXd::Constant(count, furthest_mm);
  for (Index k = first_squeeze; k < count; ++k)
    most[k] = task.squeeze_most_mm[static_cast<std::size_t>(k - first_squeeze)];
  return {-most, most};
}

Box within_reach(const Box& whole, const LidUnknowns& at, double reach) {
  return {whole.low.cwiseMax((at.array() - reach).matrix()),
          whole.high.cwiseMin((at.array() + reach).matrix())};
}

/// The margin, less a very little for each mm of movement.
double worth(double margin, const LidUnknowns& at) {
  return margin - seating_prices(at.size()).dot(at.cwiseAbs());
}

/// The worthiest seating of the gaps as their slopes have it. Each unknown is the
/// difference of two variables, neither negative; the last one is the margin. Rows 2 i
/// and 2 i + 1 keep the gap at point i from the least and from the greatest by the
/// margin; those after them keep the box.
BoundedProgramme seating_programme(const SeatingTask& task,
                                   const State& state,
                                   const Box& box) {
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

/// What a programme proposes.
struct Proposal {
  LidUnknowns to;
  double margin = 0;
  std::vector<SeatingContact> contacts;
};

Proposal propose(const SeatingTask& task, const State& state, const Box& box) {
  const auto best = optimum(seating_programme(task, state, box));
  // the present unknowns keep every row with the present margin
  assert(best.has_value());
  const Index n = state.at.size();
  Proposal proposal{best->at.head(n) - best->at.segment(n, n), best->at[2 * n], {}};
  const std::size_t rows = 2 * task.points.size();
  for (const RowPrice& row : best->prices.rows)
    if (row.row < rows) proposal.contacts.push_back({row.row / 2, row.row % 2 == 0});
  return proposal;
}

FoundSeating found(const SeatingTask& task, const State& state) {
  FoundSeating seating;
  seating.unknowns = state.at;
  seating.margin_mm = state.margin;
  for (const double gap : state.gaps) seating.gaps_mm.push_back(gap);
  for (std::size_t i = seating.gaps_mm.size(); i-- > 0;)
    if (margin_of(seating.gaps_mm[i], task) <= state.margin) seating.worst = i;
  return seating;
}

}  // namespace

Eigen::VectorXd seating_prices(Index unknowns) {
  Eigen::VectorXd prices = Eigen::VectorXd::Constant(unknowns, move_price);
  prices.tail(unknowns - first_squeeze) *= squeeze_weight;
  return prices;
}

std::optional<FoundSeating> seating_at(const SeatingTask& task,
                                       const LidUnknowns& unknowns) {
  const auto state = state_at(task, unknowns);
  if (!state) return std::nullopt;
  return found(task, *state);
}

std::optional<FoundSeating> best_seating(const SeatingTask& task) {
  const Box whole = whole_box(task);
  auto state = state_at(task, Eigen::VectorXd::Zero(whole.low.size()));
  if (!state) return std::nullopt;
  double reach = first_reach_mm;
  double shortfall = first_shortfall_mm;
  for (int step = 0; step < most_steps && reach > still_mm; ++step) {
    const Proposal next = propose(task, *state, within_reach(whole, state->at, reach));
    const double move = (next.to - state->at).lpNorm<Eigen::Infinity>();
    if (move <= still_mm) break;
    const double here = worth(state->margin, state->at);
    const double promised = worth(next.margin, next.to) - here;
    auto there = state_at(task, next.to);
    const double gained = there ? worth(there->margin, there->at) - here : -1e300;
    if (gained < promised / 4 - shortfall) {
      reach = std::min(reach, move) / 4;
    } else {
      if (gained > 0.75 * promised && move > 0.9 * reach) reach *= 2;
      state = std::move(there);
    }
    shortfall = std::max(shortfall / 2, 1e-9);
  }
  FoundSeating seating = found(task, *state);
  // with a reach of its own, so that a reach that has shrunk cannot hide a gain
  const Proposal last = propose(task, *state, within_reach(whole, state->at, 0.1));
  seating.gain_left_mm = last.margin - state->margin;
  seating.contacts = last.contacts;
  return seating;
}

}  // namespace sheerlap

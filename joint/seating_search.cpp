#include "joint/seating_search.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>
#include <utility>

#include "joint/seating_programme.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// How far the first programme may reach.
constexpr double first_reach_mm = 20;
/// A move smaller than this ends the search.
constexpr double still_mm = 1e-8;
/// What the true margin may fall short by at first; it is halved at each step.
constexpr double first_shortfall_mm = 0.01;
constexpr int most_steps = 200;
/// A squeeze nearer to its limit stands on it.
constexpr double within_limit_mm = 1e-6;
/// Margins no further apart are the same.
constexpr double alike_mm = 1e-9;
/// The climb begins with one section out of so many, and goes on with more.
constexpr std::size_t few_of = 24;
constexpr std::size_t more_of = 4;

/// The two points of one section out of so many of a side, counted from either of its
/// ends: on a boat alike on both hands, points alike on both.
LapPoints every(const SeatingTask& task, std::size_t sections) {
  LapPoints points;
  const std::size_t count = task.points.size();
  for (std::size_t first = 0, end = 0; first < count; first = end) {
    while (end < count && task.points[end].side == task.points[first].side) ++end;
    for (std::size_t point = first; point < end; ++point)
      if ((point - first) / 2 % sections == 0 || (end - 1 - point) / 2 % sections == 0)
        points.push_back(point);
  }
  return points;
}

LapPoints all_points(const SeatingTask& task) { return every(task, 1); }

/// @param state  of all points
FoundSeating found(const SeatingTask& task, const SeatingState& state) {
  FoundSeating seating;
  seating.unknowns = state.at;
  seating.margin_mm = state.margin;
  for (const double gap : state.gaps) seating.gaps_mm.push_back(gap);
  for (std::size_t i = seating.gaps_mm.size(); i-- > 0;)
    if (margin_of(seating.gaps_mm[i], task) <= state.margin + alike_mm)
      seating.worst = i;
  return seating;
}

/// The state with the best worth, from one to begin with.
SeatingState climbed(const SeatingTask& task, SeatingState state) {
  const SeatingBox whole = whole_box(task);
  double reach = first_reach_mm;
  double shortfall = first_shortfall_mm;
  for (int step = 0; step < most_steps && reach > still_mm; ++step) {
    const SeatingProposal next =
        proposal(task, state, within_reach(whole, state.at, reach));
    const double move = (next.to - state.at).lpNorm<Eigen::Infinity>();
    if (move <= still_mm) break;
    const double here = worth(state.margin, state.at);
    const double promised = worth(next.margin, next.to) - here;
    auto there = state_at(task, state.points, next.to);
    const double gained = there ? worth(there->margin, there->at) - here : -1e300;
    if (gained < promised / 4 - shortfall) {
      reach = std::min(reach, move) / 4;
    } else {
      if (gained > 0.75 * promised && move > 0.9 * reach) reach *= 2;
      state = std::move(*there);
    }
    shortfall = std::max(shortfall / 2, 1e-9);
  }
  return state;
}

/// The points of a state whose gaps fall below a margin, and are not more than those of
/// their neighbours at the same edge and side: alike ones together, so that a boat
/// alike on both hands stays so.
LapPoints missed_points(const SeatingTask& task,
                        const SeatingState& state,
                        double margin) {
  const std::size_t count = state.points.size();
  const auto lower = [&](std::size_t at, std::size_t than) {
    return task.points[state.points[at]].side == task.points[state.points[than]].side &&
           margin_of(state.gaps[static_cast<Index>(at)], task) <
               margin_of(state.gaps[static_cast<Index>(than)], task) - alike_mm;
  };
  LapPoints missed;
  for (std::size_t i = 0; i < count; ++i) {
    if (margin_of(state.gaps[static_cast<Index>(i)], task) >= margin - alike_mm)
      continue;
    const bool before = i >= 2 && lower(i - 2, i);
    const bool after = i + 2 < count && lower(i + 2, i);
    if (!before && !after) missed.push_back(state.points[i]);
  }
  return missed;
}

/// A state climbed to with few points, to which those of all that it misses are added
/// until it misses none: the best state of them all, as points only take from it.
struct Climb {
  SeatingState few;
  SeatingState all;
};

std::optional<Climb> best_among(const SeatingTask& task,
                                SeatingState few,
                                const LapPoints& asked) {
  while (true) {
    few = climbed(task, std::move(few));
    auto all = state_at(task, asked, few.at);
    if (!all) return std::nullopt;
    const LapPoints missed = missed_points(task, *all, few.margin);
    if (missed.empty()) return Climb{std::move(few), std::move(*all)};
    LapPoints more;
    std::set_union(few.points.begin(), few.points.end(), missed.begin(), missed.end(),
                   std::back_inserter(more));
    auto wider = state_at(task, more, few.at);
    assert(wider.has_value());
    few = std::move(*wider);
  }
}

/// The best state of all points, by ever more of them.
std::optional<SeatingState> best_state(const SeatingTask& task) {
  const LidUnknowns drawn = Eigen::VectorXd::Zero(whole_box(task).low.size());
  if (auto few = state_at(task, every(task, few_of), drawn))
    if (auto more = best_among(task, std::move(*few), every(task, more_of)))
      if (auto all = best_among(task, std::move(more->few), all_points(task)))
        return std::move(all->all);
  // a gap between the few could not be had: of all points no step goes so far
  auto state = state_at(task, all_points(task), drawn);
  if (state) state = climbed(task, std::move(*state));
  return state;
}

}  // namespace

std::optional<FoundSeating> seating_at(const SeatingTask& task,
                                       const LidUnknowns& unknowns) {
  const auto state = state_at(task, all_points(task), unknowns);
  if (!state) return std::nullopt;
  return found(task, *state);
}

std::optional<FoundSeating> best_seating(const SeatingTask& task) {
  const auto state = best_state(task);
  if (!state) return std::nullopt;
  FoundSeating seating = found(task, *state);
  // of all points, and with a reach of its own: one that has shrunk cannot hide a gain
  const SeatingProposal last =
      proposal(task, *state, within_reach(whole_box(task), state->at, 0.1));
  seating.gain_left_mm = last.margin - state->margin;
  seating.contacts = last.contacts;
  seating.limit_prices = last.limit_prices;
  for (std::size_t j = 0; j < seating.limit_prices.size(); ++j) {
    const double squeezed =
        std::abs(seating.unknowns[first_squeeze + static_cast<Index>(j)]);
    // within its limit what binds is the reach alone
    if (squeezed < task.squeeze_most_mm[j] - within_limit_mm)
      seating.limit_prices[j] = 0;
  }
  return seating;
}

}  // namespace sheerlap

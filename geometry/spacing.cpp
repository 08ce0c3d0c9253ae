#include "geometry/spacing.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <optional>

#include "geometry/spacing_even.h"
#include "geometry/spacing_give_way.h"
#include "geometry/spacing_ground.h"
#include "geometry/spacing_input.h"
#include "geometry/spacing_path.h"
#include "geometry/spacing_reach.h"

namespace sheerlap {
namespace {

constexpr std::size_t any_number = std::numeric_limits<std::size_t>::max() - 1;

/// A stretch whose limits can be kept, where need be after some were given up.
struct Solvable {
  SpacingGround ground;
  double slack = 0;
  std::size_t points = 0;
};

/// The limits as they are if that costs no point, otherwise with their tolerance.
std::optional<Solvable> solvable(const SpacingProblem& problem,
                                 const SpacingGiveWay& give_way) {
  SpacingGround ground(problem, give_way);
  const auto points = fewest_points(ground, {kept_limit}, any_number);
  if (!points) return std::nullopt;
  const bool strict =
      fewest_points(ground, {10 * rounding_of_limit}, *points).has_value();
  return Solvable{std::move(ground), strict ? 10 * rounding_of_limit : kept_limit,
                  *points};
}

/// Whether any two fixed places with none between are closer than the least limit.
bool too_close(const SpacingGround& ground) {
  const auto& cells = ground.cells();
  for (std::size_t cell = ground.start(); cell < ground.end(); ++cell) {
    if (!cells[cell].fixed) continue;
    const std::size_t next = ground.next_fixed(cell);
    const double apart = cells[next].from_mm - cells[cell].to_mm;
    if (apart < ground.asked(cell, next).least_mm) return true;
  }
  return false;
}

/// The limits without those that give way; nothing if there is no room for a point.
std::optional<Solvable> solvable_giving_way(const SpacingProblem& problem) {
  const SpacingGround ground(problem, {});
  if (const auto forced = forced_give_way(ground))
    if (auto stretch = solvable(problem, *forced);
        stretch && !too_close(stretch->ground))
      return stretch;
  const auto give_way = give_way_on(ground);
  if (!give_way) return std::nullopt;
  auto stretch = solvable(problem, *give_way);
  assert(stretch.has_value());
  return stretch;
}

/// The answer for a stretch that has no room for a point.
Spacing without_points(const SpacingProblem& problem) {
  const auto end_limits = [&](const StretchEnd& end) {
    if (!end.mirrored) return SpaceLimits{end.least_mm, end.greatest_mm};
    return SpaceLimits{problem.limits.least_mm / 2, problem.limits.greatest_mm / 2};
  };
  const SpaceLimits start = end_limits(problem.start);
  const SpaceLimits end = end_limits(problem.end);
  BridgedSpace whole{problem.from_mm, problem.to_mm, 0, false};
  whole.below_least = problem.to_mm - problem.from_mm < start.least_mm + end.least_mm;
  whole.limit_mm = whole.below_least ? start.least_mm + end.least_mm
                                     : std::min(start.greatest_mm, end.greatest_mm);
  return {{}, {whole}, 0};
}

/// The points of a path, and how its spaces keep their limits.
Spacing described(const SpacingGround& ground, const SpacingPath& path) {
  Spacing result;
  for (std::size_t index = 0; index + 1 < path.stops.size(); ++index) {
    const SpacingStop& here = path.stops[index];
    const SpacingStop& next = path.stops[index + 1];
    if (index > 0) result.points_mm.push_back(here.at_mm);
    const SpacingStep asked = ground.asked(here.cell, next.cell);
    const double distance = next.at_mm - here.at_mm;
    const double slack = ground.slack_mm(asked, 1.02 * kept_limit);
    const bool below = distance < asked.least_mm - slack;
    const bool above = distance > asked.greatest_mm + slack;
    if (above)
      result.bridged.push_back({here.at_mm, next.at_mm, asked.greatest_mm, false});
    if (below) result.bridged.push_back({here.at_mm, next.at_mm, asked.least_mm, true});
    if (!above && !below)
      result.largest_mm = std::max(result.largest_mm, asked.spaces * distance);
  }
  return result;
}

/// @param largest_mm  as `smallest_largest_space` gives it: it may be less than it is
/// in
///                    truth, by the slack of all the other spaces
Spacing solution(const Solvable& stretch, double largest_mm) {
  const double spaces = static_cast<double>(stretch.points) + 4;
  const double slack = std::min(spaces * stretch.slack, 4 * kept_limit);
  const SpacingAllowance allowance{stretch.slack, largest_mm * (1 + slack)};
  const auto path = best_path(stretch.ground, allowance, GreatestLimits::Kept);
  assert(path.has_value());
  return described(stretch.ground, evened(stretch.ground, *path, largest_mm));
}

}  // namespace

Result<std::vector<Spacing>> space_out(const std::vector<SpacingProblem>& stretches) {
  Errors errors = spacing_errors(stretches);
  if (!errors.empty()) return tl::unexpected(std::move(errors));

  std::vector<std::optional<Solvable>> solvables;
  double largest = 0;
  for (const SpacingProblem& problem : stretches) {
    std::optional<Solvable> stretch = solvable(problem, {});
    if (!stretch) stretch = solvable_giving_way(problem);
    if (stretch)
      largest = smallest_largest_space(stretch->ground, stretch->slack, stretch->points,
                                       largest);
    solvables.push_back(std::move(stretch));
  }
  std::vector<Spacing> result;
  for (std::size_t index = 0; index < stretches.size(); ++index)
    result.push_back(solvables[index] ? solution(*solvables[index], largest)
                                      : without_points(stretches[index]));
  return result;
}

}  // namespace sheerlap

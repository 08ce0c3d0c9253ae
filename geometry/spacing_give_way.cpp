#include "geometry/spacing_give_way.h"

#include <limits>
#include <utility>
#include <vector>

#include "geometry/spacing_even.h"
#include "geometry/spacing_path.h"

namespace sheerlap {
namespace {

/// A path that exceeds the greatest limits by as little as possible.
struct LeastExcess {
  SpacingPath path;
  double slack = 0;  ///< of the limits it was sought with
};

/// The slacks are a little less than `solvable` allows: what is kept here can be kept
/// there.
std::optional<LeastExcess> least_excess(const SpacingGround& ground) {
  const double slack = 0.9 * kept_limit;
  auto loose = best_path(ground, {slack}, GreatestLimits::Exceeded);
  if (!loose) return std::nullopt;
  auto strict = best_path(ground, {rounding_of_limit}, GreatestLimits::Exceeded);
  const double same = 2 * kept_limit * ground.largest_space_mm() *
                      static_cast<double>(loose->stops.size());
  if (!strict || strict->stops.size() > loose->stops.size() ||
      strict->excess_mm > loose->excess_mm + same)
    return LeastExcess{std::move(*loose), slack};
  return LeastExcess{std::move(*strict), rounding_of_limit};
}

/// The cells without those on an end where no point may be.
std::vector<std::size_t> usable_cells(const SpacingGround& ground) {
  const auto& cells = ground.cells();
  const auto too_near = [&](std::size_t from, std::size_t to) {
    return cells[to].to_mm == cells[from].from_mm &&
           ground.asked(from, to).least_mm > 0;
  };
  std::vector<std::size_t> result;
  for (std::size_t cell = ground.start(); cell <= ground.end(); ++cell) {
    const bool is_fixed = cells[cell].fixed;
    if (is_fixed || !(too_near(ground.start(), cell) || too_near(cell, ground.end())))
      result.push_back(cell);
  }
  return result;
}

/// A step across forbidden ground that is wider than its greatest limit.
struct ForcedStep {
  std::size_t from = 0;
  std::size_t to = 0;
  double excess_mm = 0;
  bool below_least = false;
};

std::vector<ForcedStep> forced_steps(const SpacingGround& ground) {
  const auto& cells = ground.cells();
  const std::vector<std::size_t> usable = usable_cells(ground);
  std::vector<ForcedStep> steps;
  for (std::size_t index = 0; index + 1 < usable.size(); ++index) {
    const std::size_t from = usable[index];
    const std::size_t to = usable[index + 1];
    const double apart = cells[to].from_mm - cells[from].to_mm;
    const bool no_point = from == ground.start() && to == ground.end();
    if (!(apart > 0) || no_point) continue;
    const SpacingStep asked = ground.asked(from, to);
    const double excess = apart - asked.greatest_mm;
    if (excess > ground.slack_mm(asked, kept_limit))
      steps.push_back({from, to, excess, apart < asked.least_mm});
  }
  return steps;
}

/// Whether an end distance, whose limit may be larger than that of spaces, might cross
/// forced steps with no more excess than they have.
bool ends_may_do_better(const SpacingGround& ground,
                        const std::vector<ForcedStep>& steps) {
  const auto& cells = ground.cells();
  const auto is_better = [&](std::size_t from, std::size_t to, double excess_mm) {
    const SpacingStep asked = ground.asked(from, to);
    const double distance = cells[to].from_mm - cells[from].to_mm;
    return asked.spaces == 0 && distance - asked.greatest_mm <= excess_mm;
  };
  double before = 0;
  for (const ForcedStep& step : steps) {
    before += step.excess_mm;
    if (step.from != ground.start() && is_better(ground.start(), step.to, before))
      return true;
  }
  double after = 0;
  for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
    after += step->excess_mm;
    if (step->to != ground.end() && is_better(step->from, ground.end(), after))
      return true;
  }
  return false;
}

}  // namespace

std::optional<SpacingGiveWay> give_way_on(const SpacingGround& ground) {
  const std::optional<LeastExcess> least = least_excess(ground);
  if (!least) return std::nullopt;
  SpacingGiveWay result;
  const double hair = 5 * rounding_of_limit * ground.scale_mm();
  const auto keep_place = [&](const SpacingStop& stop) {
    if (stop.cell != ground.start() && stop.cell != ground.end())
      result.points_mm.push_back(stop.at_mm);
  };
  const SpacingPath even =
      evened(ground, least->path, std::numeric_limits<double>::infinity());
  const std::vector<SpacingStop>& stops = even.stops;
  for (std::size_t index = 0; index + 1 < stops.size(); ++index) {
    const SpacingStop& here = stops[index];
    const SpacingStop& next = stops[index + 1];
    const SpacingStep step = ground.step(here.cell, next.cell, {least->slack});
    if (next.at_mm - here.at_mm <= step.greatest_mm + hair) continue;
    keep_place(here);
    keep_place(next);
    if (here.cell == ground.start())
      result.at_start = true;
    else
      result.after_mm.push_back(here.at_mm);
  }
  return result;
}

std::optional<SpacingGiveWay> forced_give_way(const SpacingGround& ground) {
  SpacingGiveWay result;
  const auto& cells = ground.cells();
  const std::vector<ForcedStep> steps = forced_steps(ground);
  if (steps.empty() || ends_may_do_better(ground, steps)) return std::nullopt;
  for (const ForcedStep& step : steps) {
    if (step.below_least) return std::nullopt;
    if (step.from == ground.start()) {
      result.at_start = true;
    } else {
      result.after_mm.push_back(cells[step.from].to_mm);
      result.points_mm.push_back(cells[step.from].to_mm);
    }
    if (step.to != ground.end()) result.points_mm.push_back(cells[step.to].from_mm);
  }
  return result;
}

}  // namespace sheerlap

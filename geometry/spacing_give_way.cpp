#include "geometry/spacing_give_way.h"

#include <limits>
#include <utility>

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
  for (std::size_t here = 0; here < ground.end(); ++here) {
    const std::size_t next = here + 1;
    const double apart = cells[next].from_mm - cells[here].to_mm;
    const bool no_point = here == ground.start() && next == ground.end();
    if (!(apart > 0) || no_point) continue;
    const SpacingStep asked = ground.asked(here, next);
    if (apart <= asked.greatest_mm + ground.slack_mm(asked, kept_limit)) continue;
    if (apart < asked.least_mm) return std::nullopt;
    if (here == ground.start()) {
      result.at_start = true;
    } else {
      result.after_mm.push_back(cells[here].to_mm);
      result.points_mm.push_back(cells[here].to_mm);
    }
    if (next != ground.end()) result.points_mm.push_back(cells[next].from_mm);
  }
  if (result.points_mm.empty()) return std::nullopt;
  return result;
}

}  // namespace sheerlap

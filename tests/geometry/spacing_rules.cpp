#include "tests/geometry/spacing_rules.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

/// An overlap by no more is none.
constexpr double nothing_mm = 1e-7;

SpaceLimits tightest(const SpaceLimits& one, const SpaceLimits& other) {
  return {std::max(one.least_mm, other.least_mm),
          std::min(one.greatest_mm, other.greatest_mm)};
}

bool is_in_order(const std::vector<double>& points_mm) {
  return std::adjacent_find(points_mm.begin(), points_mm.end(),
                            std::greater_equal<>()) == points_mm.end();
}

}  // namespace

double JudgedSpace::excess_mm() const {
  const double share = weight == 0.5 ? 0.5 : 1;
  return share * std::max(0.0, space_mm - limits.greatest_mm);
}

SpaceLimits limits_between(const SpacingProblem& problem,
                           double from_mm,
                           double to_mm) {
  SpaceLimits limits{0, std::numeric_limits<double>::infinity()};
  double outside_from = from_mm;  // up to here zones cover it
  std::vector<SpaceZone> zones = problem.zones;
  std::sort(zones.begin(), zones.end(), [](const auto& one, const auto& other) {
    return one.from_mm < other.from_mm;
  });
  bool outside = false;
  for (const SpaceZone& zone : zones) {
    const double overlap =
        std::min(to_mm, zone.to_mm) - std::max(from_mm, zone.from_mm);
    if (overlap <= nothing_mm) continue;
    limits = tightest(limits, zone.limits);
    if (zone.from_mm > outside_from + nothing_mm) outside = true;
    outside_from = std::max(outside_from, zone.to_mm);
  }
  if (outside || to_mm > outside_from + nothing_mm)
    limits = tightest(limits, problem.limits);
  return limits;
}

std::vector<JudgedSpace> judged(const SpacingProblem& problem,
                                const std::vector<double>& points_mm) {
  if (points_mm.empty()) return {};
  std::vector<JudgedSpace> result;
  const auto add_end = [&](const StretchEnd& end, double from_mm, double to_mm) {
    const double distance = to_mm - from_mm;
    if (!end.mirrored)
      result.push_back({from_mm, to_mm, distance, {end.least_mm, end.greatest_mm}, 0});
    else if (distance > nothing_mm)
      result.push_back(
          {from_mm, to_mm, 2 * distance, limits_between(problem, from_mm, to_mm), 0.5});
  };
  add_end(problem.start, problem.from_mm, points_mm.front());
  for (std::size_t index = 1; index < points_mm.size(); ++index) {
    const double from = points_mm[index - 1];
    const double to = points_mm[index];
    result.push_back({from, to, to - from, limits_between(problem, from, to), 1});
  }
  add_end(problem.end, points_mm.back(), problem.to_mm);
  return result;
}

JudgedSpacing judged_as_a_whole(const SpacingProblem& problem,
                                const std::vector<double>& points_mm,
                                double tolerance_mm) {
  JudgedSpacing result;
  for (const JudgedSpace& space : judged(problem, points_mm)) {
    const bool above = space.space_mm > space.limits.greatest_mm + tolerance_mm;
    const bool below = space.space_mm < space.limits.least_mm - tolerance_mm;
    if (above) result.excess_mm += space.excess_mm();
    if (below) ++result.below_least;
    if (above || below || space.weight == 0) continue;
    result.largest_mm = std::max(result.largest_mm, space.space_mm);
    result.squares_mm2 += space.weight * space.space_mm * space.space_mm;
  }
  result.allowed = is_in_order(points_mm);
  for (const double point : points_mm) {
    if (point < problem.from_mm || point > problem.to_mm) result.allowed = false;
    for (const Forbidden& gap : problem.forbidden)
      if (point > gap.from_mm && point < gap.to_mm) result.allowed = false;
  }
  for (const double fixed : problem.fixed_mm)
    if (std::find(points_mm.begin(), points_mm.end(), fixed) == points_mm.end())
      result.allowed = false;
  return result;
}

}  // namespace sheerlap

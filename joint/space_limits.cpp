#include "joint/space_limits.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Girths and spaces closer than this are the same, mm.
constexpr double same_mm = 1e-6;

bool same(double a_mm, double b_mm) { return std::abs(a_mm - b_mm) <= same_mm; }

/// Whether a space covers ground of a zone.
bool covers(double from_mm, double to_mm, const SpaceZone& zone) {
  return zone.from_mm < to_mm - same_mm && zone.to_mm > from_mm + same_mm;
}

SpaceLimits tightest(const SpaceLimits& one, const SpaceLimits& other) {
  return {std::max(one.least_mm, other.least_mm),
          std::min(one.greatest_mm, other.greatest_mm)};
}

}  // namespace

SpaceLimits limits_over(double from_mm, double to_mm, const SpacingProblem& problem) {
  SpaceLimits limits{0, std::numeric_limits<double>::infinity()};
  std::vector<const SpaceZone*> zones;
  for (const SpaceZone& zone : problem.zones) {
    if (!covers(from_mm, to_mm, zone)) continue;
    zones.push_back(&zone);
    limits = tightest(limits, zone.limits);
  }
  std::sort(zones.begin(), zones.end(), [](const auto* one, const auto* other) {
    return one->from_mm < other->from_mm;
  });
  double covered_to = from_mm;
  for (const SpaceZone* zone : zones) {
    if (zone->from_mm > covered_to + same_mm) break;
    covered_to = std::max(covered_to, zone->to_mm);
  }
  return covered_to < to_mm - same_mm ? tightest(limits, problem.limits) : limits;
}

const NamedLimit* limit_on(double from_mm, double to_mm, const LayoutStretch& stretch) {
  const double greatest = limits_over(from_mm, to_mm, stretch.problem).greatest_mm;
  const auto& limits = stretch.limits;
  auto limit = std::partition_point(
      limits.begin(), limits.end(),
      [&](const NamedLimit& one) { return one.zone.to_mm <= from_mm + same_mm; });
  for (; limit != limits.end() && covers(from_mm, to_mm, limit->zone); ++limit)
    if (limit->zone.limits.greatest_mm == greatest) return &*limit;
  return nullptr;
}

std::optional<std::string> named_limit_words(double from_mm,
                                             double to_mm,
                                             double times,
                                             const LayoutStretch& stretch) {
  if (stretch.limits.empty()) return std::nullopt;
  const NamedLimit* limit = limit_on(from_mm, to_mm, stretch);
  if (limit == nullptr ||
      !same(times * (to_mm - from_mm), limit->zone.limits.greatest_mm))
    return std::nullopt;
  if (limit->gave_way())
    return fmt::format("the least allowed, more than the {} allowed by {}",
                       worded(Length::mm(limit->asked_mm)), limit->whose);
  return "the most allowed by " + limit->whose;
}

std::optional<std::string> limit_words(double from_mm,
                                       double to_mm,
                                       const SideObstacles& named,
                                       const LayoutStretch& stretch) {
  if (auto found = named_limit_words(from_mm, to_mm, 1, stretch)) return found;
  const SpacingProblem& problem = stretch.problem;
  const auto words = [&](const SpaceLimits& limits,
                         const std::string& whose) -> std::optional<std::string> {
    if (same(to_mm - from_mm, limits.greatest_mm)) return "the most " + whose;
    if (same(to_mm - from_mm, limits.least_mm)) return "the least " + whose;
    return std::nullopt;
  };
  for (std::size_t i = 0; i < stretch.own_zones(); ++i) {
    const SpaceZone& zone = problem.zones[i];
    if (!covers(from_mm, to_mm, zone)) continue;
    std::string name = "zone";
    for (const NamedZone& one : named.zones)
      if (one.from.in_mm() == zone.from_mm && one.to.in_mm() == zone.to_mm &&
          !one.what.empty())
        name = one.what + " zone";
    if (auto found = words(zone.limits, "the " + name + " allows")) return found;
  }
  return words(problem.limits, "allowed");
}

}  // namespace sheerlap

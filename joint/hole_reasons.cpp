#include "joint/hole_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/layout_workings.h"
#include "joint/space_limits.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Girths and spaces closer than this are the same, mm.
constexpr double same_mm = 1e-6;

bool same(double a_mm, double b_mm) { return std::abs(a_mm - b_mm) <= same_mm; }

std::string the(const std::string& what, const std::string& otherwise) {
  return what.empty() ? otherwise : "the " + what;
}

std::string mm_words(double value_mm) { return worded(Length::mm(value_mm)); }

std::optional<Hold> keep_out_hold(double at_mm, const SideObstacles& named) {
  for (const Obstacle& obstacle : named.obstacles) {
    if (!same(at_mm, obstacle.from.in_mm()) && !same(at_mm, obstacle.to.in_mm()))
      continue;
    const std::string name = the(obstacle.what, "the keep-out");
    if (obstacle.clear > Length())
      return Hold{mm_words(obstacle.clear.in_mm()) + " clear of " + name, name};
    return Hold{"at the edge of " + name, name};
  }
  return std::nullopt;
}

std::optional<Hold> end_hold(double distance_mm,
                             const StretchEnd& end,
                             const std::string& name) {
  if (end.mirrored) return std::nullopt;
  const bool least = same(distance_mm, end.least_mm);
  if (!least && !same(distance_mm, end.greatest_mm)) return std::nullopt;
  return Hold{fmt::format("{} from {}, the {} allowed", mm_words(distance_mm), name,
                          least ? "least" : "most"),
              name};
}

/// What the limits do at a girth where they step; nothing if they do not.
std::optional<std::string> step_words(const NamedLimit* before,
                                      const NamedLimit* after) {
  const auto greatest = [](const NamedLimit& limit) {
    return Length::mm(limit.zone.limits.greatest_mm);
  };
  if (before == nullptr || after == nullptr) {
    const NamedLimit& only = before == nullptr ? *after : *before;
    return fmt::format("where the {} allowed by {} {}", worded(greatest(only)),
                       only.whose, before == nullptr ? "begin" : "end");
  }
  if (greatest(*before) == greatest(*after)) return std::nullopt;
  if (before->whose == after->whose)
    return fmt::format("where the most allowed by {} goes from {}", before->whose,
                       worded_range(greatest(*before), greatest(*after)));
  return fmt::format("where the most allowed goes from {}, by {}, to {}, by {}",
                     worded(greatest(*before)), before->whose, worded(greatest(*after)),
                     after->whose);
}

std::optional<Hold> step_hold(double at_mm, const LayoutStretch& stretch) {
  const auto& limits = stretch.limits;
  const auto found = std::partition_point(
      limits.begin(), limits.end(),
      [&](const NamedLimit& one) { return one.zone.to_mm < at_mm - same_mm; });
  if (found == limits.end()) return std::nullopt;
  const NamedLimit* before = same(found->zone.to_mm, at_mm) ? &*found : nullptr;
  const auto next = before == nullptr ? found : std::next(found);
  const NamedLimit* after =
      next != limits.end() && same(next->zone.from_mm, at_mm) ? &*next : nullptr;
  if (before == nullptr && after == nullptr) return std::nullopt;
  const auto words = step_words(before, after);
  if (!words) return std::nullopt;
  return Hold{*words, "the step of the greatest space at girth " + mm_words(at_mm)};
}

/// A run of equal spaces, as the indices of its first and last hole.
struct EqualRun {
  std::size_t first, last;
};

std::vector<EqualRun> equal_runs(const std::vector<double>& points,
                                 const std::vector<std::optional<Hold>>& holds) {
  std::vector<EqualRun> runs;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const double space = points[i + 1] - points[i];
    const bool goes_on =
        !runs.empty() && !holds[i] && same(space, points[i] - points[i - 1]);
    if (goes_on)
      runs.back().last = i + 1;
    else
      runs.push_back({i, i + 1});
  }
  return runs;
}

/// What a hole stands among.
struct Surroundings {
  const SideObstacles& named;
  const LayoutStretch& stretch;
};

/// The name of the end of a run of holes: what holds its hole, or the side's own end
/// where the run goes on to it.
std::string run_end_name(std::size_t hole,
                         const std::vector<double>& points,
                         const std::vector<std::optional<Hold>>& holds,
                         const LayoutStretch& stretch) {
  if (holds[hole]) return holds[hole]->name;
  if (hole == 0) return stretch.start_name;
  if (hole + 1 == points.size()) return stretch.end_name;
  return fmt::format("the hole at girth {}", mm_words(points[hole]));
}

std::string half_space_reason(double from_mm,
                              double to_mm,
                              const std::string& end_name,
                              const LayoutStretch& stretch) {
  const auto limit = named_limit_words(from_mm, to_mm, 2, stretch);
  return fmt::format("half a space, {}, from {}{}", mm_words(to_mm - from_mm), end_name,
                     limit ? ": the space is " + *limit : "");
}

/// Why a hole is where it is that nothing but its neighbours holds.
std::string neighbour_reason(std::size_t hole,
                             const std::vector<EqualRun>& runs,
                             const std::vector<double>& points,
                             const std::vector<std::optional<Hold>>& holds,
                             const Surroundings& around) {
  const LayoutStretch& stretch = around.stretch;
  for (const EqualRun& run : runs) {
    if (!(run.first < hole && hole < run.last)) continue;
    const auto limit = named_limit_words(points[hole - 1], points[hole], 1, stretch);
    return fmt::format(
        "equal space {} of {} between {} and {}{}", hole - run.first,
        run.last - run.first, run_end_name(run.first, points, holds, stretch),
        run_end_name(run.last, points, holds, stretch), limit ? ", " + *limit : "");
  }
  const SpacingProblem& problem = stretch.problem;
  const bool outer_start = hole == 0;
  const bool outer_end = hole + 1 == points.size();
  if (outer_start && problem.start.mirrored)
    return half_space_reason(problem.from_mm, points[0], stretch.start_name, stretch);
  if (outer_end && problem.end.mirrored)
    return half_space_reason(points[hole], problem.to_mm, stretch.end_name, stretch);
  if (outer_start)
    return fmt::format("{} from {}", mm_words(points[0] - problem.from_mm),
                       stretch.start_name);
  if (outer_end)
    return fmt::format("{} from {}", mm_words(problem.to_mm - points[hole]),
                       stretch.end_name);
  const double before = points[hole] - points[hole - 1];
  const double after = points[hole + 1] - points[hole];
  if (const auto limit =
          limit_words(points[hole - 1], points[hole], around.named, stretch))
    return fmt::format("{} from the hole before, {}", mm_words(before), *limit);
  if (const auto limit =
          limit_words(points[hole], points[hole + 1], around.named, stretch))
    return fmt::format("{} from the next hole, {}", mm_words(after), *limit);
  return fmt::format(
      "{} from the hole before and {} to the next, as their limits have "
      "it",
      mm_words(before), mm_words(after));
}

}  // namespace

std::optional<Hold> hold_at(Length girth,
                            const SideObstacles& named,
                            const LayoutStretch& stretch) {
  const double at_mm = girth.in_mm();
  for (const NamedPlace& place : named.places)
    if (same(at_mm, place.at.in_mm()))
      return Hold{"fixed: " + (place.what.empty() ? "a given place" : place.what),
                  the(place.what, "the given place")};
  if (auto hold = keep_out_hold(at_mm, named)) return hold;
  const SpacingProblem& problem = stretch.problem;
  if (auto hold = end_hold(at_mm - problem.from_mm, problem.start, stretch.start_name))
    return hold;
  if (auto hold = end_hold(problem.to_mm - at_mm, problem.end, stretch.end_name))
    return hold;
  for (const NamedZone& zone : named.zones)
    for (const Length edge : {zone.from, zone.to})
      if (same(at_mm, edge.in_mm())) {
        const std::string name =
            "the edge of " + the(zone.what.empty() ? "" : zone.what + " zone",
                                 "the zone of its own pitch");
        return Hold{"at " + name, name};
      }
  return step_hold(at_mm, stretch);
}

StretchReasons stretch_reasons(const Spacing& spacing,
                               const SideObstacles& named,
                               const LayoutStretch& stretch) {
  const std::vector<double>& points = spacing.points_mm;
  std::vector<std::optional<Hold>> holds;
  for (const double point : points)
    holds.push_back(hold_at(Length::mm(point), named, stretch));
  const auto runs = equal_runs(points, holds);
  StretchReasons reasons;
  for (const EqualRun& run : runs) {
    const double from = points[run.first];
    const double to = points[run.last];
    const std::size_t spaces = run.last - run.first;
    PlainWorking work;
    reasons.runs.push_back(
        {Length::mm(from), Length::mm(to), spaces,
         Length::mm(run_pitch(work, Length::mm(from), Length::mm(to), spaces))});
  }
  for (std::size_t i = 0; i < points.size(); ++i)
    reasons.because.push_back(
        holds[i] ? holds[i]->because
                 : neighbour_reason(i, runs, points, holds, {named, stretch}));
  return reasons;
}

std::string bridged_what(const BridgedSpace& bridged, const SideObstacles& named) {
  std::vector<std::string> names;
  const auto add = [&](const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end())
      names.push_back(name);
  };
  for (const Obstacle& obstacle : named.obstacles)
    if (obstacle.from.in_mm() < bridged.to_mm - same_mm &&
        obstacle.to.in_mm() > bridged.from_mm + same_mm)
      add(the(obstacle.what, "the keep-out"));
  if (bridged.below_least || names.empty())
    for (const NamedPlace& place : named.places)
      if (place.at.in_mm() > bridged.from_mm - same_mm &&
          place.at.in_mm() < bridged.to_mm + same_mm)
        add(the(place.what, "the given place"));
  if (names.empty()) return "the length there is between ends";
  std::string text = names.front();
  for (std::size_t i = 1; i < names.size(); ++i)
    text += (i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

}  // namespace sheerlap

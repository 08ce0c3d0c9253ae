#include "joint/limit_zones.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// The limits that hold at a girth, as one goes along.
class LimitSweep {
 public:
  explicit LimitSweep(const std::vector<PitchLimit>& limits) : limits_(limits) {
    for (std::size_t i = 0; i < limits.size(); ++i) {
      if (!(limits[i].from < limits[i].to)) continue;
      starts_.emplace_back(limits[i].from.in_mm(), i);
      ends_.emplace_back(limits[i].to.in_mm(), i);
    }
    std::sort(starts_.begin(), starts_.end());
    std::sort(ends_.begin(), ends_.end());
  }

  /// @param at_mm  no less than before
  void go_to(double at_mm) {
    for (; start_ < starts_.size() && starts_[start_].first <= at_mm; ++start_)
      holding_.insert(entry(starts_[start_].second));
    for (; end_ < ends_.size() && ends_[end_].first <= at_mm; ++end_)
      holding_.erase(entry(ends_[end_].second));
  }
  /// Of those that hold from here on, the first given of the tightest; null if none.
  const PitchLimit* tightest() const {
    return holding_.empty() ? nullptr : &limits_[holding_.begin()->second];
  }

 private:
  std::pair<double, std::size_t> entry(std::size_t index) const {
    return {limits_[index].greatest.in_mm(), index};
  }

  const std::vector<PitchLimit>& limits_;
  std::vector<std::pair<double, std::size_t>> starts_, ends_;
  std::size_t start_ = 0, end_ = 0;
  std::set<std::pair<double, std::size_t>> holding_;
};

/// What the joint file asks between two edges.
SpaceLimits own_limits(double from_mm, double to_mm, const SpacingProblem& problem) {
  const SpaceZone* first = nullptr;
  SpaceLimits limits = problem.limits;
  for (const SpaceZone& zone : problem.zones) {
    if (zone.from_mm > from_mm || zone.to_mm < to_mm) continue;
    limits = first == nullptr
                 ? zone.limits
                 : SpaceLimits{std::max(limits.least_mm, zone.limits.least_mm),
                               std::min(limits.greatest_mm, zone.limits.greatest_mm)};
    first = &zone;
  }
  return limits;
}

/// The edges within a stretch, its ends included; in order.
std::vector<double> edges_of(const SpacingProblem& problem,
                             const std::vector<PitchLimit>& limits) {
  std::vector<double> edges{problem.from_mm, problem.to_mm};
  const auto add = [&](double edge) {
    if (edge > problem.from_mm && edge < problem.to_mm) edges.push_back(edge);
  };
  for (const SpaceZone& zone : problem.zones) {
    add(zone.from_mm);
    add(zone.to_mm);
  }
  for (const PitchLimit& limit : limits) {
    add(limit.from.in_mm());
    add(limit.to.in_mm());
  }
  std::sort(edges.begin(), edges.end());
  edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
  return edges;
}

/// Adds a part, or lengthens the last one if they differ in nothing but their place.
void append(std::vector<NamedLimit>& parts, NamedLimit part) {
  if (!parts.empty()) {
    NamedLimit& last = parts.back();
    if (last.zone.to_mm == part.zone.from_mm && last.asked_mm == part.asked_mm &&
        last.zone.limits.least_mm == part.zone.limits.least_mm &&
        last.whose == part.whose) {
      last.zone.to_mm = part.zone.to_mm;
      return;
    }
  }
  parts.push_back(std::move(part));
}

}  // namespace

void hold_limits(LayoutStretch& stretch, const std::vector<PitchLimit>& limits) {
  SpacingProblem& problem = stretch.problem;
  const std::vector<double> edges = edges_of(problem, limits);
  LimitSweep sweep(limits);
  for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
    sweep.go_to(edges[i]);
    const PitchLimit* limit = sweep.tightest();
    if (limit == nullptr) continue;
    const SpaceLimits own = own_limits(edges[i], edges[i + 1], problem);
    const double asked = limit->greatest.in_mm();
    if (!(asked < own.greatest_mm)) continue;
    append(stretch.limits,
           {{edges[i], edges[i + 1], {own.least_mm, std::max(own.least_mm, asked)}},
            asked,
            limit->whose});
  }
  for (const NamedLimit& limit : stretch.limits) problem.zones.push_back(limit.zone);
}

void hold_ends(LayoutStretch& stretch, const std::vector<EndLimit>& ends) {
  SpacingProblem& problem = stretch.problem;
  const auto hold = [](StretchEnd& end, const EndLimit& limit) {
    end.greatest_mm = std::clamp(limit.greatest.in_mm(), end.least_mm, end.greatest_mm);
  };
  for (const EndLimit& limit : ends) {
    if (limit.at.in_mm() == problem.from_mm) hold(problem.start, limit);
    if (limit.at.in_mm() == problem.to_mm) hold(problem.end, limit);
  }
}

Checks given_way_checks(SideName side, const LayoutStretch& stretch) {
  Checks checks;
  double from = 0;
  double to = 0;
  const NamedLimit* before = nullptr;
  for (const NamedLimit& limit : stretch.limits) {
    if (!limit.gave_way()) continue;
    const double least = limit.zone.limits.least_mm;
    const bool goes_on = before != nullptr && to == limit.zone.from_mm &&
                         before->whose == limit.whose && checks.back().value == least;
    if (!goes_on) {
      from = limit.zone.from_mm;
      checks.push_back({"layout.limit_below_pitch_min", "", least, limit.asked_mm, "mm",
                        CheckState::Fail, limit.whose});
    }
    to = limit.zone.to_mm;
    before = &limit;
    Check& check = checks.back();
    check.limit = std::min(*check.limit, limit.asked_mm);
    check.what = fmt::format(
        "pitch_min on {}, girth {}, against the most allowed by {}", side_word(side),
        worded_range(Length::mm(from), Length::mm(to)), limit.whose);
  }
  return checks;
}

}  // namespace sheerlap

#include "joint/strength_pitch.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "joint/bond_places.h"
#include "joint/clamping.h"
#include "joint/drill_stations.h"
#include "joint/fastener_metal.h"
#include "joint/fastener_rows.h"
#include "joint/joint_loads.h"
#include "joint/layout_stretches.h"
#include "joint/rule_asks.h"
#include "joint/stepped_limits.h"
#include "joint/strength_needs.h"

namespace sheerlap {
namespace {

constexpr Length step = Length::mm(25);
constexpr Length endless = Length::mm(std::numeric_limits<double>::infinity());
constexpr const char* carried_words = "what the fasteners carry alone";
constexpr const char* clamped_words = "the bow of the wet lip";

/// What is the same all round.
struct Basis {
  const Joint& joint;
  const Perimeter& perimeter;
  FastenerSpec spec;
  JointLoads loads;
};

/// A part of a stretch with one load.
struct LoadedPart {
  Length from;
  Length to;
  JointLoad load;
};

std::vector<LoadedPart> loaded_parts(const Basis& basis,
                                     SideName side,
                                     const SpacingProblem& ground) {
  std::vector<Length> cuts{Length::mm(ground.from_mm), Length::mm(ground.to_mm)};
  for (const Length jump : basis.loads.jumps_on(side))
    if (cuts.front() < jump && jump < cuts[1]) cuts.push_back(jump);
  std::sort(cuts.begin(), cuts.end());
  std::vector<LoadedPart> parts;
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
    parts.push_back(
        {cuts[i], cuts[i + 1], basis.loads.at(side, (cuts[i] + cuts[i + 1]) / 2)});
  return parts;
}

/// Girths from one to another, both with them, no further apart than the step.
std::vector<Length> girths_between(Length from, Length to) {
  const double count = std::max(1.0, std::ceil((to - from) / step));
  std::vector<Length> girths;
  for (double i = 0; i < count; ++i) girths.push_back(from + (to - from) * (i / count));
  girths.push_back(to);
  return girths;
}

bool may_have_hole(const SpacingProblem& ground, Length girth) {
  const double at = girth.in_mm();
  const auto& fixed = ground.fixed_mm;
  if (std::find(fixed.begin(), fixed.end(), at) != fixed.end()) return true;
  if (!ground.start.mirrored && at < ground.from_mm + ground.start.least_mm)
    return false;
  if (!ground.end.mirrored && at > ground.to_mm - ground.end.least_mm) return false;
  return std::none_of(
      ground.forbidden.begin(), ground.forbidden.end(),
      [&](const Forbidden& one) { return one.from_mm < at && at < one.to_mm; });
}

/// The holes that may stand on a stretch, as finely as they are looked at; by girth.
std::vector<DrillStation> possible_holes(const Basis& basis,
                                         const PerimeterSide& side,
                                         const SpacingProblem& ground) {
  std::vector<Length> girths =
      girths_between(Length::mm(ground.from_mm), Length::mm(ground.to_mm));
  const auto add = [&](double at_mm) {
    if (ground.from_mm <= at_mm && at_mm <= ground.to_mm)
      girths.push_back(Length::mm(at_mm));
  };
  for (const double fixed : ground.fixed_mm) add(fixed);
  add(ground.from_mm + ground.start.least_mm);
  add(ground.to_mm - ground.end.least_mm);
  for (const Forbidden& one : ground.forbidden) {
    add(one.from_mm);
    add(one.to_mm);
  }
  const auto barred = [&](Length girth) { return !may_have_hole(ground, girth); };
  girths.erase(std::remove_if(girths.begin(), girths.end(), barred), girths.end());
  std::sort(girths.begin(), girths.end());
  girths.erase(std::unique(girths.begin(), girths.end()), girths.end());
  std::vector<DrillStation> holes;
  for (const auto& station : stations_at(basis.joint, basis.perimeter, side, girths))
    if (station) holes.push_back(*station);
  return holes;
}

/// The greatest space that every hole within half of it carries, and the nearest on
/// either hand in any case.
Length carried_at(const Basis& basis,
                  const std::vector<DrillStation>& holes,
                  Length girth,
                  const JointLoad& load) {
  Length greatest = endless;
  /// @returns  whether a hole further off may still lessen it
  const auto take = [&](const DrillStation& hole, bool nearest) {
    const Length away = hole.girth < girth ? girth - hole.girth : hole.girth - girth;
    const Length reach = nearest ? Length() : 2 * away;
    if (reach >= greatest) return false;
    if (const auto carried = carried_pitch(basis.joint, basis.spec, hole, load))
      greatest = std::min(greatest, std::max(*carried, reach));
    return true;
  };
  const auto after =
      std::lower_bound(holes.begin(), holes.end(), girth,
                       [](const auto& hole, Length at) { return hole.girth < at; });
  for (auto hole = after; hole != holes.end() && take(*hole, hole == after);) ++hole;
  for (auto hole = after; hole != holes.begin() && take(*(hole - 1), hole == after);)
    --hole;
  return greatest;
}

/// What the fasteners carry along a stretch.
std::vector<LimitSample> carried_samples(const Basis& basis,
                                         const PerimeterSide& side,
                                         const SpacingProblem& ground) {
  const std::vector<DrillStation> holes = possible_holes(basis, side, ground);
  std::vector<LimitSample> samples;
  for (const LoadedPart& part : loaded_parts(basis, side.name, ground)) {
    if (!(part.load.along > 0 || part.load.across > 0 || part.load.off > 0)) {
      samples.push_back({part.from, endless, carried_words});
      samples.push_back({part.to, endless, carried_words});
      continue;
    }
    for (const Length girth : girths_between(part.from, part.to))
      samples.push_back(
          {girth, carried_at(basis, holes, girth, part.load), carried_words});
  }
  return samples;
}

/// How far the first hole may stand from an end of a stretch, all of which it carries.
Length end_limit(const std::vector<LimitSample>& samples, Length end) {
  Length greatest = endless;
  for (const LimitSample& sample : samples) {
    const Length distance =
        sample.girth < end ? end - sample.girth : sample.girth - end;
    greatest = std::min(greatest, std::max(sample.greatest / 2, distance));
  }
  return greatest;
}

/// Holds the first hole near enough to an end; where end_min keeps it away, the space
/// beyond it is to be the less.
void add_end(SidePitchLimits& limits,
             Length end,
             Length greatest,
             const SpacingProblem& ground) {
  if (!(greatest < endless)) return;
  limits.ends.push_back({end, greatest});
  const bool starts = end.in_mm() == ground.from_mm;
  const StretchEnd& rule = starts ? ground.start : ground.end;
  const Length least = Length::mm(rule.least_mm);
  if (rule.mirrored || least <= greatest) return;
  const Length reach = least + step;
  limits.limits.push_back({starts ? end : end - reach, starts ? end + reach : end,
                           std::max(Length(), 2 * (2 * greatest - least)),
                           carried_words});
}

/// The bow of the wet lip along a side, as far as it is known.
Result<std::vector<LimitSample>> clamped_samples(const Basis& basis,
                                                 const PerimeterSide& side) {
  const auto places =
      bond_places(basis.joint, basis.perimeter, side, basis.loads, step);
  if (!places) return tl::unexpected(places.error());
  std::vector<LimitSample> samples;
  for (const BondPoint& place : *places)
    samples.push_back({place.on_line,
                       clamped_pitch(basis.joint, place).value_or(endless),
                       clamped_words});
  std::stable_sort(samples.begin(), samples.end(),
                   [](const auto& a, const auto& b) { return a.girth < b.girth; });
  return samples;
}

/// Adds what limits at all.
void add_stepped(SidePitchLimits& limits,
                 const std::vector<LimitSample>& samples,
                 Length most) {
  LimitSteps steps;
  steps.most = most;
  for (PitchLimit& limit : stepped_limits(samples, steps))
    if (limit.greatest < most) limits.limits.push_back(std::move(limit));
}

Result<SidePitchLimits> side_limits(const Basis& basis, const PerimeterSide& side) {
  const auto ground = layout_ground(basis.joint, basis.perimeter, side);
  if (!ground) return tl::unexpected(ground.error());
  SidePitchLimits limits;
  limits.side = side.name;
  // across a smooth end a space is twice what lies on the side
  const Length most = 2 * side.drill_line_length;
  for (const LayoutStretch& stretch : ground->stretches) {
    const SpacingProblem& problem = stretch.problem;
    const auto samples = carried_samples(basis, side, problem);
    add_stepped(limits, samples, most);
    for (const double end : {problem.from_mm, problem.to_mm})
      add_end(limits, Length::mm(end), end_limit(samples, Length::mm(end)), problem);
  }
  if (!basis.joint.strength.gap_change) return limits;
  const auto clamped = clamped_samples(basis, side);
  if (!clamped) return tl::unexpected(clamped.error());
  add_stepped(limits, *clamped, most);
  return limits;
}

/// The pitch of the chosen rules, on every side.
void add_rules(PitchLimits& limits,
               const Basis& basis,
               const std::vector<const PublishedRule*>& chosen) {
  RuleSubject subject = rule_subject(basis.joint, basis.spec);
  subject.vessel_length = basis.joint.strength.hull_length;
  const auto pitch = greatest_pitch(chosen, subject);
  if (!pitch) return;
  for (SidePitchLimits& side : limits)
    side.limits.push_back({Length(), basis.perimeter.side(side.side)->drill_line_length,
                           pitch->pitch,
                           fmt::format("the chosen rule {}", pitch->rule->id)});
}

}  // namespace

Result<PitchLimits> strength_pitch(const Joint& joint, const Perimeter& perimeter) {
  Errors errors = strength_lacks(joint);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  const auto keep = [&](const auto& result) {
    if (!result)
      errors.insert(errors.end(), result.error().begin(), result.error().end());
  };
  const auto loads = JointLoads::of(joint, perimeter);
  keep(loads);
  const auto chosen = chosen_rules(joint.strength.rules, "strength.rules");
  keep(chosen);
  const auto spec = fastener(joint.fastener);
  keep(spec);
  keep(metal_strength(joint.fastener.strength));
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  const Basis basis{joint, perimeter, *spec, *loads};
  PitchLimits limits;
  for (const PerimeterSide& side : perimeter.sides) {
    auto found = side_limits(basis, side);
    keep(found);
    if (found) limits.push_back(std::move(*found));
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  add_rules(limits, basis, *chosen);
  const bool limited = std::any_of(limits.begin(), limits.end(), [](const auto& side) {
    return !side.limits.empty();
  });
  if (!limited)
    return invalid_input(
        "layout.pitch_max",
        "[layout] pitch_max is \"strength\" and nothing limits a space: no load on the "
        "fasteners, no [strength] gap_change for a paste with a yield_stress, no "
        "chosen "
        "rule with a pitch; give one of them, or a length");
  return limits;
}

}  // namespace sheerlap

#include "joint/layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <utility>

#include "joint/hole_reasons.h"
#include "joint/layout_workings.h"
#include "joint/limit_zones.h"
#include "joint/space_limits.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// A space with the limits of the ground it covers.
struct LimitedSpace {
  double space_mm = 0;
  SpaceLimits limits;
  std::string whose;  ///< the greatest limit is; empty if it is the joint file's
  bool bridged = false;
};

/// Whose greatest limit holds a space; empty if it is the joint file's.
std::string whose_limit(double from_mm, double to_mm, const LayoutStretch& stretch) {
  if (stretch.limits.empty()) return "";
  const NamedLimit* limit = limit_on(from_mm, to_mm, stretch);
  return limit == nullptr || limit->gave_way() ? "" : limit->whose;
}

/// The spaces of one stretch: from hole to hole, and across a mirrored end.
std::vector<LimitedSpace> spaces_of(const Spacing& spacing,
                                    const LayoutStretch& stretch) {
  const SpacingProblem& problem = stretch.problem;
  std::vector<LimitedSpace> spaces;
  const auto& points = spacing.points_mm;
  const auto add = [&](double from, double to, double times) {
    if (!(to > from)) return;
    const auto& bridged = spacing.bridged;
    const bool given_up =
        std::any_of(bridged.begin(), bridged.end(), [&](const BridgedSpace& one) {
          return one.from_mm == from && one.to_mm == to;
        });
    spaces.push_back({times * (to - from), limits_over(from, to, problem),
                      whose_limit(from, to, stretch), given_up});
  };
  if (points.empty()) return spaces;
  if (problem.start.mirrored) add(problem.from_mm, points.front(), 2);
  for (std::size_t i = 0; i + 1 < points.size(); ++i) add(points[i], points[i + 1], 1);
  if (problem.end.mirrored) add(points.back(), problem.to_mm, 2);
  return spaces;
}

/// Of the spaces that are not bridged, the two nearest to their own limits.
struct NearestLimits {
  double of_greatest = 0;  ///< share of the limit
  Length largest, greatest;
  std::string whose;  ///< the greatest is; empty if it is the joint file's
  double of_least = std::numeric_limits<double>::infinity();
  Length smallest, least;

  void take(const LimitedSpace& space) {
    if (space.bridged) return;
    if (space.space_mm / space.limits.greatest_mm > of_greatest) {
      of_greatest = space.space_mm / space.limits.greatest_mm;
      largest = Length::mm(space.space_mm);
      greatest = Length::mm(space.limits.greatest_mm);
      whose = space.whose;
    }
    if (space.space_mm / space.limits.least_mm < of_least) {
      of_least = space.space_mm / space.limits.least_mm;
      smallest = Length::mm(space.space_mm);
      least = Length::mm(space.limits.least_mm);
    }
  }
};

/// Whose limit a bridged space does not keep, behind what stands in the way.
std::string past_limit(const BridgedSpace& bridged, const LayoutStretch& stretch) {
  if (bridged.below_least) return "";
  const std::string whose = whose_limit(bridged.from_mm, bridged.to_mm, stretch);
  return whose.empty() ? "" : ", past the most allowed by " + whose;
}

void add_bridges(LayoutSide& side,
                 const Spacing& spacing,
                 const SideObstacles& named,
                 const LayoutStretch& stretch) {
  const SpacingProblem& problem = stretch.problem;
  const auto& points = spacing.points_mm;
  const auto is_point = [&](double at_mm) {
    return std::binary_search(points.begin(), points.end(), at_mm);
  };
  for (const BridgedSpace& bridged : spacing.bridged) {
    // across a mirrored end the space is twice what lies on this side
    const bool mirrored =
        !points.empty() &&
        ((problem.start.mirrored && bridged.to_mm == points.front()) ||
         (problem.end.mirrored && bridged.from_mm == points.back()));
    const double sides = mirrored ? 2 : 1;
    const bool space =
        mirrored || (is_point(bridged.from_mm) && is_point(bridged.to_mm));
    side.bridged.push_back(
        {Length::mm(bridged.from_mm), Length::mm(bridged.to_mm),
         Length::mm((bridged.to_mm - bridged.from_mm) * sides),
         Length::mm(bridged.limit_mm * sides),
         bridged_what(bridged, named) + (space ? past_limit(bridged, stretch) : "")});
  }
}

/// What the checks are made of, gathered side by side.
struct Judgement {
  NearestLimits nearest;
  Checks given_way;  ///< limits that gave way to the least space
};

void add_stretch(LayoutSide& side,
                 const Spacing& spacing,
                 const SideObstacles& named,
                 const LayoutStretch& stretch) {
  for (const LimitedSpace& space : spaces_of(spacing, stretch)) {
    const Length length = Length::mm(space.space_mm);
    side.largest_pitch = std::max(side.largest_pitch, length);
    side.smallest_pitch = side.smallest_pitch == Length()
                              ? length
                              : std::min(side.smallest_pitch, length);
  }
  for (const double point : spacing.points_mm) side.girths.push_back(Length::mm(point));
  StretchReasons reasons = stretch_reasons(spacing, named, stretch);
  side.runs.insert(side.runs.end(), reasons.runs.begin(), reasons.runs.end());
  side.because.insert(side.because.end(), reasons.because.begin(),
                      reasons.because.end());
  add_bridges(side, spacing, named, stretch);
}

/// A hole on the centreline is one hole: starboard has it, and port does without.
void leave_to_starboard(LayoutSide& port, const PerimeterSide& side) {
  const auto drop = [&](std::size_t hole) {
    const auto at = static_cast<std::ptrdiff_t>(hole);
    port.girths.erase(port.girths.begin() + at);
    port.because.erase(port.because.begin() + at);
  };
  if (side.start == SideEnd::Smooth && !port.girths.empty() &&
      port.girths.front() == Length())
    drop(0);
  if (side.end == SideEnd::Smooth && !port.girths.empty() &&
      port.girths.back() == side.drill_line_length)
    drop(port.girths.size() - 1);
}

Result<LayoutSide> layout_side(const Joint& joint,
                               const Perimeter& perimeter,
                               const PerimeterSide& side,
                               const PitchLimits& given,
                               Judgement& judgement) {
  auto ground = layout_ground(joint, perimeter, side);
  if (!ground) return tl::unexpected(ground.error());
  const std::vector<PitchLimit> limits = limits_of(side.name, given);
  const std::vector<EndLimit> ends = end_limits_of(side.name, given);
  std::vector<SpacingProblem> problems;
  for (LayoutStretch& stretch : ground->stretches) {
    hold_limits(stretch, limits);
    hold_ends(stretch, ends);
    problems.push_back(stretch.problem);
    const Checks checks = given_way_checks(side.name, stretch);
    judgement.given_way.insert(judgement.given_way.end(), checks.begin(), checks.end());
  }
  const auto spacings = space_out(problems);
  if (!spacings) return tl::unexpected(spacings.error());
  LayoutSide result;
  result.name = side.name;
  for (std::size_t i = 0; i < spacings->size(); ++i) {
    add_stretch(result, (*spacings)[i], ground->named, ground->stretches[i]);
    for (const LimitedSpace& space : spaces_of((*spacings)[i], ground->stretches[i]))
      judgement.nearest.take(space);
  }
  if (side.name == SideName::Port) leave_to_starboard(result, side);
  return result;
}

/// Keep-outs, zones and places on a transom that the joint has not.
Errors without_transom(const Joint& joint) {
  Errors errors;
  const auto refuse = [&](SideChoice side, const char* table, std::size_t i) {
    if (side == SideChoice::Transom)
      errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("{}[{}].side", table, i),
           "this joint has no transom side: name starboard, port or both"});
  };
  for (std::size_t i = 0; i < joint.keepouts.size(); ++i)
    refuse(joint.keepouts[i].stretch.side, "keepout", i);
  for (std::size_t i = 0; i < joint.zones.size(); ++i)
    refuse(joint.zones[i].stretch.side, "zone", i);
  for (std::size_t i = 0; i < joint.places.size(); ++i)
    refuse(joint.places[i].side, "place", i);
  return errors;
}

void add_nearest(Checks& checks,
                 const NearestLimits& nearest,
                 const std::string& source) {
  if (nearest.of_greatest == 0) return;
  const auto state = [](bool kept) {
    return kept ? CheckState::Pass : CheckState::Fail;
  };
  const std::string by = nearest.whose.empty() ? "" : ", by " + nearest.whose;
  if (nearest.greatest < unlimited_pitch)
    checks.push_back({"layout.pitch_max",
                      "space nearest to the most its place allows" + by,
                      nearest.largest.in_mm(), nearest.greatest.in_mm(), "mm",
                      state(nearest.of_greatest <= 1 + 2e-9),
                      nearest.whose.empty() ? source : nearest.whose});
  checks.push_back({"layout.pitch_min", "space nearest to the least its place allows",
                    nearest.smallest.in_mm(), nearest.least.in_mm(), "mm",
                    state(nearest.of_least >= 1 - 2e-9), source});
}

Checks layout_checks(const Layout& layout, const Judgement& judgement) {
  Checks checks;
  const std::string source = "the joint file's pitch limits";
  for (const LayoutSide& side : layout.sides)
    for (const Bridge& bridge : side.bridged) {
      const bool small = bridge.pitch < bridge.limit;
      checks.push_back({small ? "layout.too_close" : "layout.bridged",
                        fmt::format("{} on {}, girth {}: {}",
                                    small ? "space" : "bridge", side_word(side.name),
                                    worded_range(bridge.from, bridge.to), bridge.what),
                        bridge.pitch.in_mm(), bridge.limit.in_mm(), "mm",
                        CheckState::Fail, source});
    }
  checks.insert(checks.end(), judgement.given_way.begin(), judgement.given_way.end());
  add_nearest(checks, judgement.nearest, source);
  return checks;
}

}  // namespace

Result<Layout> layout(const Joint& joint,
                      const Perimeter& perimeter,
                      const PitchLimits& limits) {
  Layout result;
  Judgement judgement;
  Errors errors = pitch_limit_errors(limits, perimeter);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  if (perimeter.side(SideName::Transom) == nullptr) errors = without_transom(joint);
  for (const PerimeterSide& side : perimeter.sides) {
    auto laid_out = layout_side(joint, perimeter, side, limits, judgement);
    if (!laid_out) {
      errors.insert(errors.end(), laid_out.error().begin(), laid_out.error().end());
      continue;
    }
    result.largest_pitch = std::max(result.largest_pitch, laid_out->largest_pitch);
    if (laid_out->smallest_pitch > Length())
      result.smallest_pitch =
          result.smallest_pitch == Length()
              ? laid_out->smallest_pitch
              : std::min(result.smallest_pitch, laid_out->smallest_pitch);
    result.sides.push_back(std::move(*laid_out));
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  PlainWorking work;
  result.count = static_cast<std::size_t>(holes_of_all(work, result.sides));
  result.checks = layout_checks(result, judgement);
  return result;
}

}  // namespace sheerlap

#include "joint/layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <utility>

#include "joint/hole_reasons.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// A space with the limits of the ground it covers.
struct LimitedSpace {
  double space_mm = 0;
  SpaceLimits limits;
  bool bridged = false;
};

/// The spaces of one stretch: from hole to hole, and across a mirrored end.
std::vector<LimitedSpace> spaces_of(const Spacing& spacing,
                                    const SpacingProblem& problem) {
  std::vector<LimitedSpace> spaces;
  const auto& points = spacing.points_mm;
  const auto add = [&](double from, double to, double times) {
    if (!(to > from)) return;
    const auto& bridged = spacing.bridged;
    const bool given_up =
        std::any_of(bridged.begin(), bridged.end(), [&](const BridgedSpace& one) {
          return one.from_mm == from && one.to_mm == to;
        });
    spaces.push_back({times * (to - from), limits_over(from, to, problem), given_up});
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
  double of_least = std::numeric_limits<double>::infinity();
  Length smallest, least;

  void take(const LimitedSpace& space) {
    if (space.bridged) return;
    if (space.space_mm / space.limits.greatest_mm > of_greatest) {
      of_greatest = space.space_mm / space.limits.greatest_mm;
      largest = Length::mm(space.space_mm);
      greatest = Length::mm(space.limits.greatest_mm);
    }
    if (space.space_mm / space.limits.least_mm < of_least) {
      of_least = space.space_mm / space.limits.least_mm;
      smallest = Length::mm(space.space_mm);
      least = Length::mm(space.limits.least_mm);
    }
  }
};

void add_bridges(LayoutSide& side,
                 const Spacing& spacing,
                 const SideObstacles& named,
                 const SpacingProblem& problem) {
  for (const BridgedSpace& bridged : spacing.bridged) {
    // across a mirrored end the space is twice what lies on this side
    const auto& points = spacing.points_mm;
    const bool mirrored =
        !points.empty() &&
        ((problem.start.mirrored && bridged.to_mm == points.front()) ||
         (problem.end.mirrored && bridged.from_mm == points.back()));
    const double sides = mirrored ? 2 : 1;
    side.bridged.push_back({Length::mm(bridged.from_mm), Length::mm(bridged.to_mm),
                            Length::mm((bridged.to_mm - bridged.from_mm) * sides),
                            Length::mm(bridged.limit_mm * sides),
                            bridged_what(bridged, named)});
  }
}

void add_stretch(LayoutSide& side,
                 const Spacing& spacing,
                 const SideObstacles& named,
                 const LayoutStretch& stretch) {
  for (const LimitedSpace& space : spaces_of(spacing, stretch.problem)) {
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
  add_bridges(side, spacing, named, stretch.problem);
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
                               NearestLimits& nearest) {
  const auto ground = layout_ground(joint, perimeter, side);
  if (!ground) return tl::unexpected(ground.error());
  std::vector<SpacingProblem> problems;
  for (const LayoutStretch& stretch : ground->stretches)
    problems.push_back(stretch.problem);
  const auto spacings = space_out(problems);
  if (!spacings) return tl::unexpected(spacings.error());
  LayoutSide result;
  result.name = side.name;
  for (std::size_t i = 0; i < spacings->size(); ++i) {
    add_stretch(result, (*spacings)[i], ground->named, ground->stretches[i]);
    for (const LimitedSpace& space : spaces_of((*spacings)[i], problems[i]))
      nearest.take(space);
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

Checks layout_checks(const Layout& layout, const NearestLimits& nearest) {
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
  if (nearest.of_greatest == 0) return checks;
  const auto state = [](bool kept) {
    return kept ? CheckState::Pass : CheckState::Fail;
  };
  checks.push_back({"layout.pitch_max", "space nearest to the most its place allows",
                    nearest.largest.in_mm(), nearest.greatest.in_mm(), "mm",
                    state(nearest.of_greatest <= 1 + 2e-9), source});
  checks.push_back({"layout.pitch_min", "space nearest to the least its place allows",
                    nearest.smallest.in_mm(), nearest.least.in_mm(), "mm",
                    state(nearest.of_least >= 1 - 2e-9), source});
  return checks;
}

}  // namespace

Result<Layout> layout(const Joint& joint, const Perimeter& perimeter) {
  Layout result;
  NearestLimits nearest;
  Errors errors;
  if (perimeter.side(SideName::Transom) == nullptr) errors = without_transom(joint);
  for (const PerimeterSide& side : perimeter.sides) {
    auto laid_out = layout_side(joint, perimeter, side, nearest);
    if (!laid_out) {
      errors.insert(errors.end(), laid_out.error().begin(), laid_out.error().end());
      continue;
    }
    result.count += laid_out->girths.size();
    result.largest_pitch = std::max(result.largest_pitch, laid_out->largest_pitch);
    if (laid_out->smallest_pitch > Length())
      result.smallest_pitch =
          result.smallest_pitch == Length()
              ? laid_out->smallest_pitch
              : std::min(result.smallest_pitch, laid_out->smallest_pitch);
    result.sides.push_back(std::move(*laid_out));
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  result.checks = layout_checks(result, nearest);
  return result;
}

}  // namespace sheerlap

#include "joint/layout.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/hole_reasons.h"

namespace sheerlap {
namespace {

/// The spaces of one stretch: from hole to hole, and across a mirrored end.
std::vector<double> spaces_of(const Spacing& spacing, const SpacingProblem& problem) {
  std::vector<double> spaces;
  const auto& points = spacing.points_mm;
  if (points.empty()) return spaces;
  const double at_start = points.front() - problem.from_mm;
  const double at_end = problem.to_mm - points.back();
  if (problem.start.mirrored && at_start > 0) spaces.push_back(2 * at_start);
  for (std::size_t i = 0; i + 1 < points.size(); ++i)
    spaces.push_back(points[i + 1] - points[i]);
  if (problem.end.mirrored && at_end > 0) spaces.push_back(2 * at_end);
  return spaces;
}

void add_stretch(LayoutSide& side,
                 const Spacing& spacing,
                 const SideObstacles& named,
                 const LayoutStretch& stretch) {
  for (const double space : spaces_of(spacing, stretch.problem)) {
    const Length length = Length::mm(space);
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
  const SpacingProblem& problem = stretch.problem;
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

Result<LayoutSide> layout_side(const Joint& joint,
                               const Perimeter& perimeter,
                               const PerimeterSide& side) {
  const auto ground = layout_ground(joint, perimeter, side);
  if (!ground) return tl::unexpected(ground.error());
  std::vector<SpacingProblem> problems;
  for (const LayoutStretch& stretch : ground->stretches)
    problems.push_back(stretch.problem);
  const auto spacings = space_out(problems);
  if (!spacings) return tl::unexpected(spacings.error());
  LayoutSide result;
  result.name = side.name;
  for (std::size_t i = 0; i < spacings->size(); ++i)
    add_stretch(result, (*spacings)[i], ground->named, ground->stretches[i]);
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

Checks layout_checks(const Layout& layout, const LayoutRules& rules) {
  Checks checks;
  const std::string source = "the joint file's pitch limits";
  for (const LayoutSide& side : layout.sides)
    for (const Bridge& bridge : side.bridged) {
      const bool small = bridge.pitch < bridge.limit;
      checks.push_back(
          {small ? "layout.too_close" : "layout.bridged",
           fmt::format("{} on {}, {:.1f} to {:.1f} mm: {}", small ? "space" : "bridge",
                       side_word(side.name), bridge.from.in_mm(), bridge.to.in_mm(),
                       bridge.what),
           bridge.pitch.in_mm(), bridge.limit.in_mm(), "mm", CheckState::Fail, source});
    }
  if (!checks.empty()) return checks;
  checks.push_back({"layout.pitch_max", "largest space of all sides",
                    layout.largest_pitch.in_mm(), rules.pitch_max.in_mm(), "mm",
                    CheckState::Pass, source});
  checks.push_back({"layout.pitch_min", "smallest space of all sides",
                    layout.smallest_pitch.in_mm(), rules.pitch_min.in_mm(), "mm",
                    CheckState::Pass, source});
  return checks;
}

}  // namespace

Result<Layout> layout(const Joint& joint, const Perimeter& perimeter) {
  Layout result;
  Errors errors;
  if (perimeter.side(SideName::Transom) == nullptr) errors = without_transom(joint);
  for (const PerimeterSide& side : perimeter.sides) {
    auto laid_out = layout_side(joint, perimeter, side);
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
  result.checks = layout_checks(result, joint.layout);
  return result;
}

}  // namespace sheerlap

#include "joint/adhesive.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "geometry/face_integral.h"
#include "joint/bond_space.h"
#include "joint/fit_reach.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// The errors of a corner, made to name its row.
tl::unexpected<Errors> at_row(Errors errors,
                              const Perimeter& perimeter,
                              std::size_t knot) {
  for (Error& error : errors)
    error.where = fmt::format("sheer.row[{}]", perimeter.knots[knot].row);
  return tl::unexpected(std::move(errors));
}

Result<Volume> joint_volume(const Perimeter& perimeter, const EnclosedSpace& space) {
  double volume = 0;
  for (const PerimeterSide& side : perimeter.sides)
    for (const SpanPart& part : side.parts) volume += space.volume_mm3(part);
  for (const std::size_t knot : perimeter.mitres) {
    const auto corner = space.mitre_volume_mm3(knot);
    if (!corner) return at_row(corner.error(), perimeter, knot);
    volume += *corner;
  }
  return Volume::mm3(volume);
}

Result<AdhesiveAmounts> amounts_with(const Joint& joint,
                                     const Perimeter& perimeter,
                                     const RuledFace& lip) {
  const EnclosedSpace space = bond_space(joint.bond, perimeter, lip);
  const auto volume = joint_volume(perimeter, space);
  if (!volume) return tl::unexpected(volume.error());
  return amounts_of(*volume, bead_volume(bead_runs(perimeter, space, *joint.adhesive)),
                    *joint.adhesive);
}

/// The amounts with the lip further off; none, and a warning, if the corners then do
/// not meet.
std::optional<AdhesiveAmounts> amounts_shifted(const Joint& joint,
                                               const Perimeter& perimeter,
                                               double by_mm,
                                               Checks& checks) {
  const auto amounts = amounts_with(joint, perimeter, perimeter.lip->shifted(by_mm));
  if (amounts) return *amounts;
  const bool further = by_mm > 0;
  checks.push_back(
      {further ? "adhesive.most" : "adhesive.least",
       fmt::format("the {} is left out: with the lip {} {} {}",
                   further ? "most" : "least", worded(Length::mm(std::abs(by_mm))),
                   further ? "further off" : "closer", amounts.error().front().message),
       by_mm, std::nullopt, "mm", CheckState::Warn,
       "derived: the corners meet as drawn, not with the lip moved"});
  return std::nullopt;
}

Result<double> bond_area_mm2(const Perimeter& perimeter, const EnclosedSpace& space) {
  const auto one = [](Place, double) { return 1.0; };
  double area = 0;
  for (const PerimeterSide& side : perimeter.sides)
    for (const SpanPart& part : side.parts)
      area += face_integral(*perimeter.hull, part, space, one);
  for (const std::size_t knot : perimeter.mitres) {
    const auto corner = mitre_integral(*perimeter.hull, knot, space, one);
    if (!corner) return at_row(corner.error(), perimeter, knot);
    area += *corner;
  }
  return area;
}

/// The side of a run, and any other whose run is the same.
std::vector<SideName> sides_alike(const std::vector<BeadRun>& beads,
                                  const BeadRun& run) {
  const auto same = [](Length a, Length b) {
    return std::abs((a - b).in_mm()) <= alike_mm;
  };
  std::vector<SideName> sides;
  for (const BeadRun& one : beads)
    if (one.beads == run.beads && same(one.size, run.size) &&
        std::abs(one.needed_mm2 - run.needed_mm2) <= alike_mm * run.size.in_mm() &&
        same(one.from, run.from) && same(one.to, run.to))
      sides.push_back(one.side);
  return sides;
}

/// Whether one bead does everywhere.
Check bead_size_check(const std::vector<BeadRun>& beads, const Adhesive& adhesive) {
  const std::string id = "adhesive.bead_size";
  const std::string source = "the joint file: adhesive.bead_sizes";
  const Length largest =
      *std::max_element(adhesive.bead_sizes.begin(), adhesive.bead_sizes.end());
  const double covers = bead_area_mm2(adhesive.bead_shape, largest);
  if (beads.empty())
    return {id,    "no joint to lay a bead in", 0, covers, "mm2", CheckState::Pass,
            source};
  // of runs that are alike the first is named, so a rounding is no difference
  const auto worst = std::max_element(
      beads.begin(), beads.end(), [](const BeadRun& a, const BeadRun& b) {
        return b.needed_mm2 - a.needed_mm2 > alike_mm * b.size.in_mm();
      });
  const bool one = worst->beads == 1;
  const std::string sides = sides_words(sides_alike(beads, *worst));
  const std::string what =
      one ? "section that one bead has to cover, most on " + sides
          : fmt::format(
                "the largest bead, {}, is too small on {} at girth {} along "
                "the sheer: {} of {} side by side",
                worded(largest), sides, worded_range(worst->from, worst->to),
                worst->beads, worded(worst->size));
  return {id,     what,  worst->needed_mm2,
          covers, "mm2", one ? CheckState::Pass : CheckState::Warn,
          source};
}

}  // namespace

Result<AdhesivePlan> adhesive_plan(const Joint& joint,
                                   const Perimeter& perimeter,
                                   std::size_t fasteners) {
  assert(joint.adhesive);
  const Adhesive& adhesive = *joint.adhesive;
  const RuledFace& lip = *perimeter.lip;
  const auto nominal = amounts_with(joint, perimeter, lip);
  if (!nominal) return tl::unexpected(nominal.error());
  const EnclosedSpace space = bond_space(joint.bond, perimeter, lip);
  const auto area = bond_area_mm2(perimeter, space);
  if (!area) return tl::unexpected(area.error());

  AdhesivePlan plan;
  plan.bond_area_mm2 = *area;
  plan.beads = bead_runs(perimeter, space, adhesive);
  plan.nominal = *nominal;
  plan.least = amounts_shifted(joint, perimeter, -lip_shift.in_mm(), plan.checks);
  plan.most = amounts_shifted(joint, perimeter, lip_shift.in_mm(), plan.checks);
  plan.checks.push_back(bead_size_check(plan.beads, adhesive));
  if (joint.shop && adhesive.working_time) {
    plan.time = time_plan(adhesive, *joint.shop, plan.nominal, fasteners);
    const Checks checks = time_checks(adhesive, *joint.shop, *plan.time);
    plan.checks.insert(plan.checks.end(), checks.begin(), checks.end());
  }
  return plan;
}

}  // namespace sheerlap

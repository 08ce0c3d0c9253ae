#include "joint/strength.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/bond_outside.h"
#include "joint/strength_told.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

void append(Explanations& all, Explanations more) {
  for (Explanation& one : more) all.push_back(std::move(one));
}

Check bond_check(const BondStrength& bond) {
  const BondPoint& worst = bond.worst;
  return {
      "strength.bond",
      fmt::format("use of the bond at its worst place, {}, girth {}: {}",
                  side_word(worst.side), worded(worst.girth), mode_words(worst.mode)),
      worst.utilisation,
      1,
      "",
      worst.utilisation <= 1 ? CheckState::Pass : CheckState::Fail,
      "the joint file's strengths, loads and factor_bond"};
}

Check fastener_check(const FastenerStrengths& fasteners) {
  const FastenerRow& worst = fasteners.rows[fasteners.worst];
  return {"strength.fasteners",
          fmt::format("use of the fasteners alone at the worst hole, {}: {}",
                      worst.mark, mode_words(worst.governing)),
          worst.utilisation,
          1,
          "",
          worst.utilisation <= 1 ? CheckState::Pass : CheckState::Fail,
          "the joint file's strengths, loads and factor_fastener"};
}

Check no_fastener_check() {
  return {"strength.fasteners",
          "holes: none, so nothing holds the joint if the bond fails",
          0,
          1,
          "",
          CheckState::Fail,
          "the layout"};
}

Checks clamping_checks(const Joint& joint, const Clamping& clamping) {
  Checks checks;
  if (clamping.bow && clamping.space > Length() && joint.strength.gap_change)
    checks.push_back(
        {"strength.clamping",
         fmt::format("bow of the wet lip in the space of {} on {}, girth {}",
                     worded(clamping.space), side_word(clamping.place.side),
                     worded(clamping.place.girth)),
         clamping.bow->in_mm(), joint.strength.gap_change->in_mm(), "mm",
         *clamping.bow <= *joint.strength.gap_change ? CheckState::Pass
                                                     : CheckState::Warn,
         "[strength] gap_change"});
  return checks;
}

/// The bond is not judged where the gap leaves the adhesive's window.
Checks window_checks(const BondStrength& bond, const Adhesive& adhesive) {
  const auto outside = [&](const BondPoint& point) {
    return std::min(point.gap_top, point.gap_low) < adhesive.gap_min ||
           std::max(point.gap_top, point.gap_low) > adhesive.gap_max;
  };
  const auto count = std::count_if(bond.along.begin(), bond.along.end(), outside);
  if (count == 0) return {};
  return {{"strength.gap_window",
           "places of the bond with a gap outside the adhesive's window: its strength "
           "is not known there, so the use worked out for them is not to be relied on",
           static_cast<double>(count), 0, "", CheckState::Warn,
           "the joint file: adhesive.gap_min, adhesive.gap_max"}};
}

Checks rule_checks(const RuleRows& rows) {
  Checks checks;
  for (const RuleRow& row : rows) {
    if (row.state != RuleState::Fail && row.state != RuleState::Warn) continue;
    checks.push_back(
        {"strength.rule." + row.rule, row.asks_words + "; here " + row.has_words,
         row.has ? row.has->in_mm() : 0,
         row.asks ? std::optional<double>(row.asks->in_mm()) : std::nullopt, "mm",
         row.state == RuleState::Fail ? CheckState::Fail : CheckState::Warn,
         row.source});
  }
  return checks;
}

std::vector<std::string> combination_words() {
  return {
      "Loads are limit loads. Causes of one direction add as if they acted together "
      "and the same way; along, across and off act at once. Both is the safe side.",
      "The bond and the fasteners are each worked for the whole load: what one carries "
      "is never added to what the other carries.",
      "Factors stand on the load: use = load x factor / capacity, and 1 is all there "
      "is."};
}

Explanations all_reasons(const Joint& joint,
                         const Perimeter& perimeter,
                         const Schedule& schedule,
                         const JointLoads& loads,
                         const Strength& strength,
                         Length largest) {
  Explanations reasons = loads.reasons();
  append(reasons,
         bond_reasons(joint, loads, strength.bond.worst, "strength.bond.worst"));
  if (!strength.fasteners.rows.empty()) {
    const std::size_t worst = strength.fasteners.worst;
    append(reasons,
           fastener_reasons(joint, schedule.fastener, schedule.stations[worst],
                            hole_neighbours(perimeter, schedule.stations, worst, loads),
                            "strength.fasteners." + schedule.stations[worst].mark));
  }
  append(reasons, load_sharing_reasons(joint, schedule.fastener, strength.sharing_place,
                                       largest));
  append(reasons, clamping_reasons(joint, schedule.fastener, strength.clamping));
  return reasons;
}

}  // namespace

Result<Strength> strength(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout,
                          const Schedule& schedule) {
  Errors errors;
  const auto keep = [&](const auto& result) {
    if (!result)
      errors.insert(errors.end(), result.error().begin(), result.error().end());
  };
  const auto loads = JointLoads::of(joint, perimeter);
  keep(loads);
  const auto chosen = chosen_rules(joint.strength.rules, "strength.rules");
  keep(chosen);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  auto bond = bond_strength(joint, perimeter, *loads);
  keep(bond);
  auto fasteners = fastener_strengths(joint, perimeter, schedule, *loads);
  keep(fasteners);
  if (!errors.empty()) return tl::unexpected(std::move(errors));

  Strength result;
  result.bond = std::move(*bond);
  result.fasteners = std::move(*fasteners);
  result.combination = combination_words();
  result.clamping = clamping(joint, schedule.fastener, result.bond, layout);
  result.sharing_place = least_gap(result.bond);
  result.sharing = load_sharing(joint, schedule.fastener, result.sharing_place,
                                layout.largest_pitch);
  RuleSubject subject = rule_subject(joint, perimeter, schedule);
  subject.vessel_length = joint.strength.hull_length;
  result.rules = rule_rows(subject, *chosen);
  result.checks.push_back(bond_check(result.bond));
  result.checks.push_back(result.fasteners.rows.empty()
                              ? no_fastener_check()
                              : fastener_check(result.fasteners));
  for (const Checks& more :
       {window_checks(result.bond, *joint.adhesive),
        clamping_checks(joint, result.clamping), rule_checks(result.rules)})
    result.checks.insert(result.checks.end(), more.begin(), more.end());
  result.reasons = strength_told(
      all_reasons(joint, perimeter, schedule, *loads, result, layout.largest_pitch),
      result);
  return result;
}

}  // namespace sheerlap

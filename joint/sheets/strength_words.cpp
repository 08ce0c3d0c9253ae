#include "joint/sheets/strength_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/wording.h"
#include "joint/rule_words.h"

namespace sheerlap {
namespace {

std::string length_words(const std::optional<Length>& length,
                         const NumberStyle& style) {
  return length ? style.span(*length) : "-";
}

void add_once(std::vector<std::string>& list, const std::string& words) {
  if (std::find(list.begin(), list.end(), words) == list.end()) list.push_back(words);
}

bool is_remembered(const std::string& words) {
  return words.find("from memory") != std::string::npos;
}

std::string joined(const std::vector<std::string>& parts) {
  std::string all;
  for (const std::string& part : parts) all += (all.empty() ? "" : "; ") + part;
  return all;
}

std::string sureness_of(const RuleRow& row) {
  const PublishedRule* rule = published_rule(row.rule);
  // the source itself says that it was remembered
  if (!rule || rule->sureness == RuleSureness::Memory) return "";
  return fmt::format(" ({})", sureness_words(rule->sureness));
}

}  // namespace

std::string use_words(double use) {
  if (!std::isfinite(use)) return "beyond all";
  constexpr int most = 9;
  int count = 3;
  while (use != 1 && count < most &&
         std::round(use * std::pow(10, count)) == std::pow(10, count))
    ++count;
  return decimals(use, count);
}

std::string use_verdict(double use) { return use <= 1 ? "PASS" : "FAIL"; }

std::string use_of_one(double use) { return use_words(use) + " of 1"; }

std::string with_unit(double value, const std::string& unit) {
  return at_most_decimals(value, 2) + " " + unit;
}

std::string figure_unit(const std::string& unit) { return unit == "1" ? "" : unit; }

std::vector<NamedValue> worst_bond_values(const Job& job, const NumberStyle& style) {
  const BondPoint& worst = job.strength->bond.worst;
  return {
      {"use at the worst place, with the factor", use_of_one(worst.utilisation)},
      {"what gives first", mode_words(worst.mode)},
      {"worst place",
       fmt::format("{}, girth {} {} along the sheer", side_word(worst.side),
                   style.running(worst.girth), style.unit_name())},
      {"gap at the upper edge of the bond band, at the lower edge",
       fmt::format("{}, {} {}", style.gap(worst.gap_top), style.gap(worst.gap_low),
                   style.unit_name())},
      {"width of the bond band, along the hull face",
       style.size_with_unit(worst.width)},
      {"limit load along the joint, heat included",
       with_unit(worst.load.along, "N/mm")},
      {"limit load across the lap", with_unit(worst.load.across, "N/mm")},
      {"limit load that pulls the lip away", with_unit(worst.load.off, "N/mm")},
      {"peak shear stress along the joint", with_unit(worst.shear_along, "N/mm2")},
      {"peak shear stress across the lap", with_unit(worst.shear_across, "N/mm2")},
      {"peak peel stress", with_unit(worst.peel, "N/mm2")},
      {"factor asked of the bond", at_most_decimals(job.joint.loads->factor_bond, 3)}};
}

std::vector<NamedValue> worst_hole_values(const Job& job, const NumberStyle& style) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  if (fasteners.rows.empty()) return {};
  const FastenerRow& worst = fasteners.rows[fasteners.worst];
  std::vector<NamedValue> values{
      {"use at the worst hole, with the factor", use_of_one(worst.utilisation)},
      {"what gives first", mode_words(worst.governing)},
      {"worst hole", fmt::format("{}, {}, girth {} {} on the drill line", worst.mark,
                                 side_word(worst.side), style.running(worst.girth),
                                 style.unit_name())},
      {"length of joint that it carries",
       style.span(worst.tributary) + " " + style.unit_name()},
      {"shear on it at the limit load", decimals(worst.load, 0) + " N"},
      {"pull on it at the limit load", decimals(worst.pull, 0) + " N"}};
  const std::pair<FastenerMode, std::optional<double>> modes[] = {
      {FastenerMode::Shank, worst.shank},
      {FastenerMode::Bearing, worst.bearing},
      {FastenerMode::ShearOut, worst.shear_out},
      {FastenerMode::NetTension, worst.net_tension},
      {FastenerMode::ShankPull, worst.shank_pull},
      {FastenerMode::PullThrough, worst.pull_through},
      {FastenerMode::PullOut, worst.pull_out}};
  for (const auto& [mode, capacity] : modes)
    if (capacity)
      values.push_back(
          {"carries before: " + mode_words(mode), decimals(*capacity, 0) + " N"});
  values.push_back({"factor asked of the fasteners",
                    at_most_decimals(job.joint.loads->factor_fastener, 3)});
  return values;
}

std::vector<NamedValue> clamping_values(const Clamping& clamping,
                                        const NumberStyle& style) {
  std::vector<NamedValue> values{
      {"space between two holes that asks most",
       style.span(clamping.space) + " " + style.unit_name()},
      {"least gap within it",
       fmt::format("{}, girth {} {} along the sheer", side_word(clamping.place.side),
                   style.running(clamping.place.girth), style.unit_name())}};
  const auto add = [&](const char* name, const std::optional<double>& value,
                       const char* unit, int count) {
    if (value) values.push_back({name, at_most_decimals(*value, count) + " " + unit});
  };
  const auto add_length = [&](const char* name, const std::optional<Length>& value) {
    if (value) values.push_back({name, style.size_with_unit(*value)});
  };
  add("force to close it at the given speed, flow", clamping.flow_force, "N/mm", 2);
  add("force below which the paste does not move", clamping.hold_force, "N/mm", 2);
  add("force to close it, at most", clamping.line_force, "N/mm", 2);
  add("that on each fastener beside that space", clamping.fastener_force, "N", 0);
  add_length("bow of the wet lip midway between fasteners", clamping.bow);
  add_length("largest space for the change of gap allowed", clamping.pitch);
  add_length("cured: space beyond which fasteners press each alone",
             clamping.even_pitch);
  add_length("cured: space beyond which the lip lifts midway", clamping.lift_pitch);
  add_length("largest space for a seal that is not bonded", clamping.tight_pitch);
  return values;
}

std::vector<NamedValue> sharing_values(const LoadSharing& sharing) {
  std::vector<NamedValue> values;
  const auto flexible = [&](const char* name, const std::optional<double>& value) {
    if (value) values.push_back({name, fmt::format("{:.3g} mm/N", *value)});
  };
  const auto share = [&](const char* name, const std::optional<double>& value) {
    if (value) values.push_back({name, at_most_decimals(100 * *value, 2) + " %"});
  };
  flexible("give of a fastener, formula for laminates", sharing.flexibility);
  flexible("give of a fastener, formula for metal sheets", sharing.metal_flexibility);
  share("load in the fasteners, bond whole, laminates", sharing.share);
  share("load in the fasteners, bond whole, metal sheets", sharing.metal_share);
  return values;
}

std::vector<std::string> remembered(const Strength& strength) {
  std::vector<std::string> list;
  for (const Explanation& explanation : strength.reasons)
    for (const Reason& step : explanation.steps)
      for (const std::string& words : {step.source, step.validity, step.origin.words})
        if (is_remembered(words))
          add_once(list, fmt::format("{} ({}): {}", step.what, step.letters, words));
  for (const OutsideValidity& outside : strength.bond.outside)
    if (is_remembered(outside.what)) add_once(list, outside.what);
  for (const RuleRow& row : strength.rules)
    if (is_remembered(row.source)) add_once(list, row.rule + ": " + row.source);
  return list;
}

std::vector<std::string> not_worked(const Job& job) {
  std::vector<std::string> list;
  for (const auto& [laminate, name] :
       {std::pair{&job.joint.hull, "hull"}, std::pair{&job.joint.lip, "lip"}})
    if (!laminate->strength.through)
      list.push_back(fmt::format(
          "{0}.through is not given: whether peel parts the {0}'s laminate through its "
          "thickness is not worked",
          name));
  for (const std::string& words : job.strength->fasteners.left_out)
    list.push_back(words);
  return list;
}

RuleCells rule_cells(const RuleRow& row, const NumberStyle& style) {
  RuleCells cells;
  cells.state = std::string(state_words(row.state)) + (row.chosen ? ", held to" : "");
  cells.asks_words = row.asks_words;
  cells.asks = length_words(row.asks, style);
  cells.has_words = row.has_words + (row.where.empty() ? "" : ", " + row.where);
  cells.has = length_words(row.has, style);
  cells.margin = length_words(row.margin, style);
  cells.source = row.source + sureness_of(row);
  cells.notes = style.sentence(joined(row.notes));
  return cells;
}

Checks strength_checks(const Job& job) {
  Checks checks;
  for (const Check& check : job.checks)
    if (check.id.starts_with("strength.")) checks.push_back(check);
  return checks;
}

}  // namespace sheerlap

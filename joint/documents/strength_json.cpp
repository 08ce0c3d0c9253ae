#include "joint/documents/strength_json.h"

#include <cmath>
#include <utility>

#include "joint/perimeter.h"
#include "joint/rule_words.h"

namespace sheerlap {
namespace {

/// A number; null where it is beyond all numbers, as a use without a bond line is.
Json finite(double value) { return std::isfinite(value) ? number(value) : Json(); }

Json load_json(const JointLoad& load) {
  return {{"along", number(load.along)},
          {"across", number(load.across)},
          {"off", number(load.off)}};
}

Json point_json(const BondPoint& point) {
  return {{"side", side_word(point.side)},
          {"girth", number(point.girth)},
          {"gap", number(point.gap())},
          {"gap_top", number(point.gap_top)},
          {"gap_low", number(point.gap_low)},
          {"width", number(point.width)},
          {"load", load_json(point.load)},
          {"shear_along", number(point.shear_along)},
          {"shear_across", number(point.shear_across)},
          {"peel", number(point.peel)},
          {"utilisation", finite(point.utilisation)},
          {"mode", mode_words(point.mode)}};
}

Json bond_json(const BondStrength& bond) {
  Json stations = Json::array();
  for (const BondPoint& point : bond.stations) stations.push_back(point_json(point));
  Json along = Json::array();
  for (const BondPoint& point : bond.along)
    along.push_back({{"side", side_word(point.side)},
                     {"girth", number(point.girth)},
                     {"utilisation", finite(point.utilisation)},
                     {"mode", mode_words(point.mode)}});
  Json outside = Json::array();
  for (const OutsideValidity& one : bond.outside)
    outside.push_back({{"what", one.what}, {"where", one.where}});
  return {{"worst", point_json(bond.worst)},
          {"stations", std::move(stations)},
          {"along", std::move(along)},
          {"outside_validity", std::move(outside)}};
}

Json row_json(const FastenerRow& row) {
  return {{"mark", row.mark},
          {"load", number(row.load)},
          {"pull", number(row.pull)},
          {"carries", number(row.tributary)},
          {"shank", number(row.shank)},
          {"shank_pull", number(row.shank_pull)},
          {"bearing", number(row.bearing)},
          {"shear_out", number(row.shear_out)},
          {"net_tension", number(row.net_tension)},
          {"pull_through", number(row.pull_through)},
          {"pull_out", number(row.pull_out)},
          {"governing", mode_words(row.governing)},
          {"utilisation", finite(row.utilisation)}};
}

Json sharing_json(const LoadSharing& sharing) {
  return {{"flexibility", number(sharing.flexibility)},
          {"metal_flexibility", number(sharing.metal_flexibility)},
          {"share", number(sharing.share)},
          {"metal_share", number(sharing.metal_share)},
          {"says", sharing.says}};
}

Json clamping_json(const Clamping& clamping) {
  return {{"side", side_word(clamping.place.side)},
          {"girth", number(clamping.place.girth)},
          {"space", number(clamping.space)},
          {"flow_force", number(clamping.flow_force)},
          {"hold_force", number(clamping.hold_force)},
          {"line_force", number(clamping.line_force)},
          {"fastener_force", number(clamping.fastener_force)},
          {"bow", number(clamping.bow)},
          {"pitch", number(clamping.pitch)},
          {"even_pitch", number(clamping.even_pitch)},
          {"lift_pitch", number(clamping.lift_pitch)},
          {"tight_pitch", number(clamping.tight_pitch)},
          {"left_out", clamping.left_out}};
}

Json rule_json(const RuleRow& row) {
  return {{"rule", row.rule},
          {"asks", row.asks_words},
          {"asks_mm", number(row.asks)},
          {"has", row.has_words},
          {"has_mm", number(row.has)},
          {"state", std::string(state_words(row.state))},
          {"chosen", row.chosen},
          {"source", row.source},
          {"notes", row.notes}};
}

Json step_json(const Reason& step, const std::string& from) {
  Json json{{"letters", step.letters},
            {"what", step.what},
            {"value", finite(step.value)},
            {"unit", step.unit}};
  if (step.is_given()) {
    if (!step.origin.address.empty()) json["address"] = step.origin.address;
    json["from"] = from;
    return json;
  }
  if (step.is_found()) {
    json["found"] = step.found;
    json["accuracy"] = step.accuracy;
  } else {
    json["formula"] = step.formula;
    json["numbers"] = step.numbers;
  }
  json["source"] = step.source;
  json["validity"] = step.validity;
  return json;
}

}  // namespace

Json explanations_json(const Explanations& explanations,
                       const Joint& joint,
                       const OriginWords& words_of) {
  Json list = Json::array();
  for (const Explanation& one : explanations) {
    Json steps = Json::array();
    for (const Reason& step : one.steps)
      steps.push_back(step_json(step, origin_text(step.origin, joint, words_of)));
    Json tells = Json::array();
    for (const Told& told : one.tells)
      tells.push_back({{"path", told.path}, {"letters", told.letters}});
    list.push_back({{"figure", one.figure},
                    {"what", one.what},
                    {"steps", std::move(steps)},
                    {"tells", std::move(tells)}});
  }
  return list;
}

Json strength_json(const Strength& strength) {
  Json fasteners = Json::array();
  for (const FastenerRow& row : strength.fasteners.rows)
    fasteners.push_back(row_json(row));
  Json rules = Json::array();
  for (const RuleRow& row : strength.rules) rules.push_back(rule_json(row));
  return {{"combination", strength.combination},
          {"bond", bond_json(strength.bond)},
          {"fasteners", std::move(fasteners)},
          {"fasteners_left_out", strength.fasteners.left_out},
          {"share", sharing_json(strength.sharing)},
          {"clamping", clamping_json(strength.clamping)},
          {"rules", std::move(rules)}};
}

}  // namespace sheerlap

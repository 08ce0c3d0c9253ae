#include "joint/documents/options_json.h"

#include <cmath>
#include <utility>

#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// A use; null where it is beyond all numbers, as one without a bond line is.
Json use_json(double use) { return std::isfinite(use) ? number(use) : Json(); }

Json outside_json(const GapOutside& outside) {
  if (!(outside.by > Length())) return nullptr;
  return {{"by", number(outside.by)},
          {"gap", number(outside.gap)},
          {"side", side_word(outside.side)},
          {"girth", number(outside.girth)}};
}

void add_figures(Json& json, const CandidateFigures& figures) {
  json["fasteners"] = figures.fasteners;
  json["bond_use"] = use_json(figures.bond_use);
  json["bond_mode"] = mode_words(figures.bond_mode);
  json["fastener_use"] =
      figures.worst ? use_json(figures.worst->utilisation) : Json(nullptr);
  json["fastener_mode"] =
      figures.worst ? Json(mode_words(figures.worst->governing)) : Json(nullptr);
  json["fastener_worst"] = figures.worst ? Json(figures.worst->mark) : Json(nullptr);
  const auto& clear = figures.hull_clear;
  json["hull_clear"] = clear ? number(clear->least) : Json(nullptr);
  json["hull_clear_at"] = clear ? Json(clear->mark) : Json(nullptr);
  json["holes_that_miss"] = clear ? clear->missing : 0;
  json["gap_outside"] = outside_json(figures.outside);
  json["packs"] = figures.packs;
  json["nozzles"] = figures.nozzles;
  json["cost"] = figures.cost.known() ? number(figures.cost.priced) : Json(nullptr);
  json["cost_of_what_is_priced"] = number(figures.cost.priced);
  json["unpriced"] = figures.cost.unpriced;
}

}  // namespace

Json options_json(const Candidates& candidates) {
  Json list = Json::array();
  for (const Candidate& candidate : candidates) {
    Json json{{"fastener", candidate.fastener},
              {"adhesive", candidate.adhesive},
              {"own", candidate.own()},
              {"workable", candidate.workable()}};
    if (candidate.figures) add_figures(json, *candidate.figures);
    json["ruled_out"] = candidate.ruled_out;
    json["notes"] = candidate.notes;
    list.push_back(std::move(json));
  }
  return list;
}

}  // namespace sheerlap

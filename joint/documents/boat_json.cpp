#include "joint/documents/boat_json.h"

#include <utility>

#include "joint/documents/boat_words.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

Json limits_json(const GapLimits& limits) {
  return {{"gap_min", number(limits.gap_min)},
          {"gap_max", number(limits.gap_max)},
          {"step", number(limits.step)}};
}

/// What was read at one edge; null where two readings are taken together or none is.
Json read_json(const Boat& boat,
               const GapCorrection& correction,
               std::optional<Length> GapReading::*edge) {
  if (correction.readings.size() != 1) return nullptr;
  return number(boat.readings[correction.readings.front()].*edge);
}

Json corrections_json(const Boat& boat) {
  Json list = Json::array();
  for (const SideCorrections& side : boat.corrections)
    for (const GapCorrection& correction : side.at)
      list.push_back({{"side", side_word(side.side)},
                      {"girth", number(correction.girth)},
                      {"place", correction.place},
                      {"read_top", read_json(boat, correction, &GapReading::top)},
                      {"read_low", read_json(boat, correction, &GapReading::low)},
                      {"top", number(correction.top)},
                      {"low", number(correction.low)},
                      {"one_edge", correction.one_edge},
                      {"between_sides", correction.between_sides}});
  return list;
}

Json held_json(const Boat& boat) {
  Json list = Json::array();
  for (const HeldStretch& stretch : boat.held)
    list.push_back({{"side", side_word(stretch.side)},
                    {"from", number(stretch.from)},
                    {"to", number(stretch.to)},
                    {"reading", number(stretch.reading)}});
  return list;
}

Json unread_json(const Boat& boat) {
  Json list = Json::array();
  for (const SideName side : boat.unread) list.push_back(side_word(side));
  return list;
}

Json out_json(const NonConformance& out) {
  Json open = Json::array();
  for (const Disposition disposition : out.open) open.push_back(word_of(disposition));
  return {{"name", name_of(out)},           {"what", word_of(out.kind)},
          {"side", side_word(out.side)},    {"marks", out.marks},
          {"from", number(out.from)},       {"to", number(out.to)},
          {"at", number(out.at)},           {"depth", number(out.depth)},
          {"value", number(out.value)},     {"limit", number(out.limit)},
          {"out_by", number(out_by(out))},  {"known", word_of(out.known)},
          {"dispositions", std::move(open)}};
}

Json edge_json(const EdgeGap& edge) {
  return {{"gap", number(edge.gap)},
          {"grind", number(edge.grind)},
          {"build_up", number(edge.build_up)}};
}

Json work_json(const PlaceGap& place) {
  Json work{{"mark", place.place},          {"side", side_word(place.side)},
            {"girth", number(place.girth)}, {"known", word_of(place.known)},
            {"top", edge_json(place.top)},  {"low", edge_json(place.low)}};
  if (!place.fastener) return work;
  work["length"] = number(place.fastener->length);
  work["length_drawn"] = number(place.fastener->drawn);
  work["length_needed"] = number(place.fastener->needed);
  return work;
}

Json beads_json(const std::vector<BeadChange>& changes) {
  Json list = Json::array();
  for (const BeadChange& change : changes)
    list.push_back({{"side", side_word(change.side)},
                    {"from", number(change.from)},
                    {"to", number(change.to)},
                    {"size", number(change.size)},
                    {"beads", change.beads},
                    {"size_drawn", number(change.drawn_size)},
                    {"beads_drawn", change.drawn_beads}});
  return list;
}

Json drawn_json(const DrawnParts& drawn) {
  Json parts = Json::object();
  if (drawn.fit)
    parts["fit"] = {{"gap_min", number(drawn.fit->least.gap)},
                    {"gap_max", number(drawn.fit->greatest.gap)},
                    {"gap_mean", number(drawn.fit->mean)}};
  if (drawn.adhesive) {
    const AdhesiveAmounts& amounts = drawn.adhesive->nominal;
    parts["adhesive"] = {{"joint_volume", number(amounts.joint.in_ml())},
                         {"bead_volume", number(amounts.bead.in_ml())},
                         {"boat_volume", number(amounts.boat.in_ml())},
                         {"packs", amounts.packs}};
  }
  return parts;
}

}  // namespace

Json boat_json(const Boat& boat) {
  Json result{{"state", state_word(boat.state)},
              {"limits", limits_json(boat.limits)},
              {"corrections", corrections_json(boat)},
              {"held", held_json(boat)},
              {"unread", unread_json(boat)},
              {"accepted", boat.out.empty()},
              {"non_conformances", Json::array()},
              {"work", Json::array()},
              {"beads_changed", beads_json(boat.beads)},
              {"drawn", drawn_json(boat.drawn)}};
  if (!boat.file.empty()) result["readings_file"] = boat.file;
  for (const NonConformance& out : boat.out)
    result["non_conformances"].push_back(out_json(out));
  for (const PlaceGap& place : boat.places) result["work"].push_back(work_json(place));
  return result;
}

}  // namespace sheerlap

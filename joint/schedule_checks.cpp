#include "joint/schedule_checks.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/mark_ranges.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

constexpr const char* class_table =
    "class-rule table for composite craft, edition not confirmed";
constexpr const char* laboratory_tests =
    "US Forest Products Laboratory Report 1824 (1951)";

/// Values no further apart count as equal: of two worst stations the first is named.
constexpr double rounding_mm = 1e-6;

/// An edge of the lap, and a station's distance from it.
struct Edge {
  const char* id;
  const char* words;
  Length DrillStation::*distance;
};
constexpr Edge low_edge{"schedule.edge_low", "the lip's low edge",
                        &DrillStation::edge_low};
constexpr Edge top_edge{"schedule.edge_top", "the hull's top edge",
                        &DrillStation::edge_top};

const DrillStation& nearest(const std::vector<DrillStation>& stations,
                            const Edge& edge) {
  return *std::min_element(
      stations.begin(), stations.end(), [&](const auto& a, const auto& b) {
        return (a.*edge.distance - b.*edge.distance).in_mm() < -rounding_mm;
      });
}

void add_edge(Checks& checks,
              const std::vector<DrillStation>& stations,
              const Edge& edge,
              Length diameter) {
  const DrillStation& worst = nearest(stations, edge);
  const double has = (worst.*edge.distance).in_mm();
  const auto add = [&](const std::string& id, double diameters, CheckState short_of,
                       const char* source) {
    const double asks = diameters * diameter.in_mm();
    checks.push_back(
        {id,
         fmt::format(
             "least distance from a hole to {}, trim tolerance taken off, at {} "
             "({:g} d is asked)",
             edge.words, worst.mark, diameters),
         has, asks, "mm", has >= asks - rounding_mm ? CheckState::Pass : short_of,
         source});
  };
  add(edge.id, 2, CheckState::Fail, class_table);
  add(std::string(edge.id) + "_tests", 2.5, CheckState::Warn, laboratory_tests);
}

Check hull_met(const std::vector<DrillStation>& stations) {
  const DrillStation& worst = nearest(stations, top_edge);
  const std::string misses = mark_ranges(stations, misses_hull);
  const std::string what =
      misses.empty()
          ? fmt::format(
                "every bit enters the hull below its trimmed edge; nearest at {}",
                worst.mark)
          : fmt::format("the fastener misses the hull at {}", misses);
  return {"schedule.hull_met",
          what,
          worst.edge_top.in_mm(),
          0,
          "mm",
          misses.empty() ? CheckState::Pass : CheckState::Fail,
          "derived: the bit's entry on the hull, trim tolerance taken off"};
}

/// Whether every station has a fastener long enough in stock.
Check length_served(const std::vector<DrillStation>& stations,
                    const FastenerSpec& spec) {
  const DrillStation* worst = nullptr;
  const std::string unserved = mark_ranges(
      stations, [](const DrillStation& station) { return !station.length; });
  for (const DrillStation& station : stations) {
    const bool worse = worst == nullptr || (worst->length && !station.length);
    const bool as_bad =
        worst != nullptr && worst->length.has_value() == station.length.has_value();
    if (worse || (as_bad && (station.stack - worst->stack).in_mm() > rounding_mm))
      worst = &station;
  }
  const bool rivet = spec.kind == FastenerKind::BlindRivet;
  const std::string need = rivet ? "grip" : "length";
  const Length longest = rivet ? spec.grips.back().greatest : spec.lengths.back();
  std::string what =
      unserved.empty()
          ? fmt::format("greatest {} needed, at {}, against the longest in stock", need,
                        worst->mark)
          : fmt::format("no {} in stock serves {}; {} needs most: {}", need, unserved,
                        worst->mark, worded(length_needed(spec, worst->stack)));
  return {"schedule.length",
          std::move(what),
          length_needed(spec, worst->stack).in_mm(),
          longest.in_mm(),
          "mm",
          unserved.empty() ? CheckState::Pass : CheckState::Fail,
          "derived: the stack along the bit, and what stands beyond it"};
}

Check countersink(const Joint& joint, const FastenerSpec& spec) {
  const double thickness = joint.lip.thickness.in_mm();
  const double depth = spec.countersink_depth.in_mm();
  const double limit = thickness * 2 / 3;
  constexpr double fails_beyond = 0.9;  // of the lip: from memory, confirm
  const CheckState state = depth <= limit                      ? CheckState::Pass
                           : depth <= fails_beyond * thickness ? CheckState::Warn
                                                               : CheckState::Fail;
  return {"schedule.countersink",
          fmt::format("depth of the {} against 2/3 of the lip's thickness; beyond 0.9 "
                      "of it the head pulls through",
                      spec.head == HeadKind::Pan ? "chamfer" : "countersink"),
          depth,
          limit,
          "mm",
          state,
          std::string(memory_note)};
}

Check pitch_in_diameters(const Layout& layout, const FastenerSpec& spec) {
  const double has = layout.largest_pitch.in_mm();
  const double asks = 20 * spec.diameter.in_mm();
  return {
      "schedule.pitch_20d",
      "largest pitch, for information, against 20 d: hull to deck, bonded; the table "
      "is for bolts",
      has,
      asks,
      "mm",
      has <= asks ? CheckState::Pass : CheckState::Warn,
      class_table};
}

/// That a pilot hole is not among the common ones; empty if it is, or none is known.
std::string outside_common(const FastenerSpec& spec, Length pilot) {
  const auto& common = spec.laminate_pilot;
  if (!common || (pilot >= common->least && pilot <= common->greatest)) return "";
  return fmt::format(", and it is outside the {} common in glass laminate ({})",
                     worded_range(common->least, common->greatest), memory_note);
}

}  // namespace

Checks station_checks(const Joint& joint,
                      const Layout& layout,
                      const std::vector<DrillStation>& stations,
                      const FastenerSpec& spec) {
  Checks checks;
  if (stations.empty()) return checks;
  add_edge(checks, stations, low_edge, spec.diameter);
  add_edge(checks, stations, top_edge, spec.diameter);
  checks.push_back(hull_met(stations));
  checks.push_back(length_served(stations, spec));
  checks.push_back(countersink(joint, spec));
  if (layout.largest_pitch > Length())
    checks.push_back(pitch_in_diameters(layout, spec));
  return checks;
}

Checks fastener_checks(const FastenerSpec& spec) {
  Checks checks;
  std::vector<std::string> remembered;
  for (const FastenerValue& value : spec.values) {
    const std::string words = fmt::format("{} {}", value.what, worded(value.value));
    if (value.source.ends_with(memory_note)) remembered.push_back(words);
    if (spec.pilot_for_plastics && value.is_pilot)
      checks.push_back(
          {"fastener.pilot",
           words + ": none is published for glass laminate" +
               outside_common(spec, value.value) + ", prove it on an offcut",
           value.value.in_mm(), std::nullopt, "mm", CheckState::Warn, value.source});
  }
  if (!remembered.empty())
    checks.push_back({"fastener.values",
                      fmt::format("values of {} that were not read in their source: {}",
                                  spec.size, fmt::join(remembered, "; ")),
                      static_cast<double>(remembered.size()), std::nullopt, "",
                      CheckState::Warn, std::string(memory_note)});
  return checks;
}

Checks jig_checks(const Perimeter& perimeter,
                  const std::vector<DrillStation>& stations,
                  const std::vector<JigSegment>& jigs,
                  const JigRules& rules) {
  Checks checks;
  for (std::size_t i = 1; i < jigs.size(); ++i) {
    const DrillStation& last = stations[jigs[i - 1].last];
    const DrillStation& next = stations[jigs[i].first];
    if (last.side != next.side || last.mark == next.mark ||
        parted(*perimeter.side(last.side), last.girth, next.girth))
      continue;
    checks.push_back({"jig.index_hole",
                      fmt::format("{} and {} share no hole: the space from {} to {} is "
                                  "longer than a jig; index {} from a corner",
                                  jigs[i - 1].name, jigs[i].name, last.mark, next.mark,
                                  jigs[i].name),
                      next.pitch.in_mm(), longest_run(rules).in_mm(), "mm",
                      CheckState::Warn,
                      "the joint file: jig.length_max, less a bush at each end"});
  }
  return checks;
}

Checks bush_checks(const JigRules& rules,
                   const FastenerSpec& spec,
                   Length smallest_pitch) {
  Checks checks{{"jig.bush", "the bush, over its outside, takes the bit for the lip",
                 rules.bush.in_mm(), spec.lip_hole.in_mm(), "mm",
                 rules.bush > spec.lip_hole ? CheckState::Pass : CheckState::Fail,
                 "the joint file: jig.bush"}};
  if (smallest_pitch > Length())
    checks.push_back({"jig.bush_pitch",
                      "the bush has room in the smallest pitch beside its neighbour",
                      rules.bush.in_mm(), smallest_pitch.in_mm(), "mm",
                      rules.bush < smallest_pitch ? CheckState::Pass : CheckState::Fail,
                      "the joint file: jig.bush"});
  return checks;
}

Checks bush_edge_checks(const JigRules& rules,
                        const std::vector<DrillStation>& stations,
                        const std::vector<JigPiece>& pieces) {
  const JigHole* lowest = nullptr;
  for (const JigPiece& piece : pieces)
    for (const JigHole& hole : piece.holes)
      if (lowest == nullptr || hole.above_edge < lowest->above_edge) lowest = &hole;
  if (lowest == nullptr) return {};
  const Length left = lowest->above_edge - rules.bush / 2;
  return {{"jig.bush_edge",
           fmt::format("what is left of the jig between the bush at {} and the lip's "
                       "low edge, on which it sits",
                       stations[lowest->station].mark),
           left.in_mm(), 0, "mm", left > Length() ? CheckState::Pass : CheckState::Fail,
           "the joint file: jig.bush, fastener.line"}};
}

}  // namespace sheerlap

#include "joint/published_rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "joint/fasteners.h"
#include "joint/nearest_word.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

using enum RuleQuantity;
using enum RuleForm;
using enum RulePlace;
using enum RuleSureness;

constexpr std::string_view class_table =
    "a class-rule table for composite craft (edition not confirmed)";
constexpr std::string_view laboratory_tests =
    "US Forest Products Laboratory Report 1824 (1951)";
constexpr std::string_view composites_handbook = "MIL-HDBK-17-3F, vol. 3, ch. 12";
constexpr std::string_view ship_rules =
    "a national class society's rules for FRP ships, section 6, 602.9";
constexpr std::string_view length_table =
    "a class society's rules for reinforced plastic vessels (1978), deck-to-hull "
    "joint: from memory, confirm";
constexpr std::string_view light_craft =
    "class rules for light craft in fibre composite (2013): from memory, confirm";
constexpr std::string_view aerospace =
    "aerospace custom, MIL-HDBK-17 vol. 3: from memory, confirm";
constexpr std::string_view pultruded =
    "pre-standard for pultruded FRP structures (2010): from memory, confirm";
constexpr std::string_view steel_manual = "a steel design manual";
constexpr std::string_view flange_rule =
    "bolt spacing of gasketed pipe flanges: from memory, confirm";
constexpr std::string_view no_source = "common practice, no source";

constexpr std::string_view word_maximum =
    "the excerpt says pitch; that it means the greatest is the natural reading";
constexpr std::string_view word_least =
    "the excerpt says least distance of lines that are reeled, that is staggered";
constexpr std::string_view sealing_angle =
    "an internal boundary sealing angle has to be provided";
constexpr std::string_view edge_by_class =
    "a least for a joint that is bonded and bolted; below 2.5 D a joint that is bolted "
    "alone failed at its edge in tests";
constexpr std::string_view of_the_tests =
    "about 400 tests of bolted polyester and glass-fabric laminate, 1/8 and 1/4 in "
    "thick, wet and dry";
constexpr std::string_view where_ends_are =
    "along a perimeter there is an end only at a corner, an opening or a butt";
constexpr std::string_view for_carbon =
    "written for near quasi-isotropic carbon and epoxy: never a failed check here";
constexpr std::string_view no_boat_has_it = "no boat has a lip as deep as that";
constexpr std::string_view for_steel =
    "for steel, shown for contrast: not for laminates";
constexpr std::string_view rows_whole =
    "overlap, diameter and spacing belong together: the spacing is for bolts of that "
    "diameter";
constexpr std::string_view not_carried_on =
    "from 30 to 120 ft and no further; between two lengths in proportion, as "
    "remembered";
constexpr std::string_view bedded_joint =
    "mating faces in bedding compound, and a rail, guard or moulding over the joint, "
    "as "
    "remembered";
constexpr std::string_view lap_cut_off =
    "for glass up to 3600 g/m2; wider by 6.5 mm a step beyond, but how large a step is "
    "was not visible";
constexpr std::string_view little_sure = "remembered with little confidence";
constexpr std::string_view four_to_five = "4 to 5 d as remembered; the less is asked";
constexpr std::string_view side_range = "1.5 to 2 d as remembered; the more is asked";
constexpr std::string_view two_with_care = "2 d with care, as remembered";
constexpr std::string_view one_to_three =
    "1 to 3 thicknesses as remembered; the less is asked";
constexpr std::string_view steel_flanges =
    "made for steel pipe flanges under pressure: close for a thin lip, and only where "
    "a "
    "sealant makes the seal";
constexpr std::string_view spanner_range =
    "2.5 to 3 d as remembered; the less is asked";
constexpr std::string_view centres_in_use =
    "4, 6 and 8 in are in use; the most is asked";

constexpr std::array of_pitch{word_maximum};
constexpr std::array of_mastic_pitch{word_maximum, sealing_angle};
constexpr std::array of_row_gap{word_least};
constexpr std::array of_edge{edge_by_class};
constexpr std::array of_end_tests{of_the_tests, where_ends_are};
constexpr std::array of_edge_tests{of_the_tests};
constexpr std::array of_length_table{rows_whole, not_carried_on, bedded_joint};
constexpr std::array of_laminated_lap{lap_cut_off};
constexpr std::array of_single_lap{for_carbon, no_boat_has_it};
constexpr std::array of_carbon{for_carbon};
constexpr std::array of_light_craft_pitch{little_sure, four_to_five};
constexpr std::array of_little_sure{little_sure};
constexpr std::array of_pultruded_end{little_sure, two_with_care, where_ends_are};
constexpr std::array of_pultruded_edge{little_sure, side_range};
constexpr std::array of_steel{for_steel};
constexpr std::array of_diameter{one_to_three};
constexpr std::array of_flange{steel_flanges};
constexpr std::array of_spanner{spanner_range};
constexpr std::array of_centres{centres_in_use};

constexpr RuleAsks ask(RuleQuantity quantity, RuleForm form, double factor) {
  return {RuleAsk{quantity, form, factor}};
}

constexpr RuleAsks diameters(RuleQuantity quantity, double factor) {
  return ask(quantity, BoltDiameters, factor);
}

constexpr RuleAsks by_length{RuleAsk{LeastOverlap, TableByLength, 0},
                             RuleAsk{LeastBoltDiameter, TableByLength, 0},
                             RuleAsk{GreatestPitch, TableByLength, 0}};

constexpr std::array rules = std::to_array<PublishedRule>({
    {"pitch_below_waterline", "bolts no more than 10 diameters apart", BelowWaterline,
     diameters(GreatestPitch, 10), Seen, WrittenFor::Bolts, class_table, of_pitch},
    {"pitch_above_waterline", "bolts no more than 15 diameters apart", AboveWaterline,
     diameters(GreatestPitch, 15), Seen, WrittenFor::Bolts, class_table, of_pitch},
    {"pitch_hull_to_deck_bonded", "bolts no more than 20 diameters apart",
     HullToDeckAdhesive, diameters(GreatestPitch, 20), Seen, WrittenFor::Bolts,
     class_table, of_pitch},
    {"pitch_hull_to_deck_mastic", "bolts no more than 20 diameters apart",
     HullToDeckMastic, diameters(GreatestPitch, 20), Seen, WrittenFor::Bolts,
     class_table, of_mastic_pitch},
    {"pitch_deckhouse", "bolts no more than 20 diameters apart", Deckhouse,
     diameters(GreatestPitch, 20), Seen, WrittenFor::Bolts, class_table, of_pitch},
    {"pitch_deckhouse_bonded", "bolts no more than 20 diameters apart",
     DeckhouseAdhesive, diameters(GreatestPitch, 20), Seen, WrittenFor::Bolts,
     class_table, of_pitch},
    {"pitch_deckhouse_mastic", "bolts no more than 20 diameters apart", DeckhouseMastic,
     diameters(GreatestPitch, 20), Seen, WrittenFor::Bolts, class_table,
     of_mastic_pitch},
    {"row_gap_class", "lines of bolts at least 3 diameters apart", AnyFastened,
     diameters(LeastRowGap, 3), Seen, WrittenFor::Bolts, class_table, of_row_gap},
    {"edge_class", "a line of bolts at least 2 diameters from a free edge", AnyFastened,
     diameters(LeastEdgeDistance, 2), Seen, WrittenFor::Bolts, class_table, of_edge},
    {"edge_tests", "2.5 diameters to the edge, at which no edge failed", AnyFastened,
     diameters(LeastEdgeDistance, 2.5), Seen, WrittenFor::Bolts, laboratory_tests,
     of_edge_tests},
    {"end_tests", "4 diameters to the end, at which no end failed", AnyFastened,
     diameters(LeastEndDistance, 4), Seen, WrittenFor::Bolts, laboratory_tests,
     of_end_tests},
    {"deck_to_hull_by_length", "overlap, bolt and spacing by the vessel's length",
     HullToDeck, by_length, Memory, WrittenFor::Bolts, length_table, of_length_table},
    {"lap_laminated", "a lap of at least 38 mm", LaminatedLap,
     ask(LeastOverlap, Fixed, 38), Seen, WrittenFor::NoFastener, ship_rules,
     of_laminated_lap},
    {"lap_single_80t", "an overlap of 80 times the laminate's thickness", BondedLap,
     ask(LeastOverlap, LipThicknesses, 80), Information, WrittenFor::NoFastener,
     composites_handbook, of_single_lap},
    {"lap_double_30t", "an overlap of 30 times the laminate's thickness",
     BondedDoubleLap, ask(LeastOverlap, LipThicknesses, 30), Information,
     WrittenFor::NoFastener, composites_handbook, of_carbon},
    {"scarf_50t", "a scarf of 50 times the laminate's thickness", BondedScarf,
     ask(LeastOverlap, LipThicknesses, 50), Information, WrittenFor::NoFastener,
     composites_handbook, of_carbon},
    {"taper_1_in_10",
     "ends of the overlap tapered 1 in 10, down to 0.51 mm",
     BondedLap,
     ask(LeastTaper, TaperedLip, 10),
     Information,
     WrittenFor::NoFastener,
     composites_handbook,
     {}},
    {"edge_light_craft", "bolts at least 3 diameters from an edge", AnyFastened,
     diameters(LeastEdgeDistance, 3), Memory, WrittenFor::Bolts, light_craft,
     of_little_sure},
    {"pitch_light_craft", "bolts at least 4 diameters apart", AnyFastened,
     diameters(LeastPitch, 4), Memory, WrittenFor::Bolts, light_craft,
     of_light_craft_pitch},
    {"edge_aerospace",
     "fasteners at least 3 diameters from an edge",
     AnyFastened,
     diameters(LeastEdgeDistance, 3),
     Memory,
     WrittenFor::AnyFastener,
     aerospace,
     {}},
    {"pitch_aerospace",
     "fasteners at least 4 diameters apart",
     AnyFastened,
     diameters(LeastPitch, 4),
     Memory,
     WrittenFor::AnyFastener,
     aerospace,
     {}},
    {"row_gap_aerospace",
     "lines of fasteners at least 4 diameters apart",
     AnyFastened,
     diameters(LeastRowGap, 4),
     Memory,
     WrittenFor::AnyFastener,
     aerospace,
     {}},
    {"diameter_aerospace", "fasteners at least as thick as the laminate", AnyFastened,
     ask(LeastBoltDiameter, LipThicknesses, 1), Memory, WrittenFor::AnyFastener,
     aerospace, of_diameter},
    {"end_pultruded", "bolts at least 4 diameters from an end in tension", AnyFastened,
     diameters(LeastEndDistance, 4), Memory, WrittenFor::Bolts, pultruded,
     of_pultruded_end},
    {"edge_pultruded", "bolts at least 2 diameters from a side edge", AnyFastened,
     diameters(LeastEdgeDistance, 2), Memory, WrittenFor::Bolts, pultruded,
     of_pultruded_edge},
    {"pitch_pultruded", "bolts at least 4 diameters apart", AnyFastened,
     diameters(LeastPitch, 4), Memory, WrittenFor::Bolts, pultruded, of_little_sure},
    {"end_steel", "holes at least 2 hole diameters from an end", SteelPlate,
     ask(LeastEndDistance, HoleDiameters, 2), Information, WrittenFor::Bolts,
     steel_manual, of_steel},
    {"edge_steel", "holes at least 1.5 hole diameters from an edge", SteelPlate,
     ask(LeastEdgeDistance, HoleDiameters, 1.5), Information, WrittenFor::Bolts,
     steel_manual, of_steel},
    {"pitch_steel", "holes at least 3.5 hole diameters apart", SteelPlate,
     ask(LeastPitch, HoleDiameters, 3.5), Information, WrittenFor::Bolts, steel_manual,
     of_steel},
    {"row_gap_steel", "lines of holes at least 3 hole diameters apart", SteelPlate,
     ask(LeastRowGap, HoleDiameters, 3), Information, WrittenFor::Bolts, steel_manual,
     of_steel},
    {"flange_self_energising", "2 d + 6 t/(m + 0.5) between bolts, gasket m = 0",
     HullToDeckMastic, ask(GreatestPitch, GasketedFlange, 0), Memory, WrittenFor::Bolts,
     flange_rule, of_flange},
    {"flange_soft", "2 d + 6 t/(m + 0.5) between bolts, soft elastomer m = 0.5",
     HullToDeckMastic, ask(GreatestPitch, GasketedFlange, 0.5), Memory,
     WrittenFor::Bolts, flange_rule, of_flange},
    {"flange_harder", "2 d + 6 t/(m + 0.5) between bolts, harder elastomer m = 1",
     HullToDeckMastic, ask(GreatestPitch, GasketedFlange, 1), Memory, WrittenFor::Bolts,
     flange_rule, of_flange},
    {"pitch_spanner", "bolts at least 2.5 diameters apart, for a spanner", AnyFastened,
     diameters(LeastPitch, 2.5), Memory, WrittenFor::Bolts, flange_rule, of_spanner},
    {"pitch_bedded", "bolts on centres of no more than 8 in", HullToDeckMastic,
     ask(GreatestPitch, Fixed, 8 * 25.4), Common, WrittenFor::Bolts, no_source,
     of_centres},
});

std::vector<std::string_view> choosable_ids() {
  std::vector<std::string_view> ids;
  for (const PublishedRule& rule : rules)
    if (rule.sureness != Information) ids.push_back(rule.id);
  return ids;
}

/// What is wrong with one id of a list; empty if nothing is.
std::string id_fault(const std::vector<std::string>& ids, std::size_t i) {
  const PublishedRule* rule = published_rule(ids[i]);
  if (rule == nullptr)
    return fmt::format("no rule here is called {}: {}", quoted_text(ids[i]),
                       word_hint(ids[i], choosable_ids()));
  if (rule->sureness == Information)
    return fmt::format(
        "{} is for information and asks nothing of this joint: leave "
        "it out, it is shown all the same",
        rule->id);
  const auto here = ids.begin() + static_cast<std::ptrdiff_t>(i);
  if (std::find(ids.begin(), here, ids[i]) != here)
    return fmt::format("{} is named twice: once", rule->id);
  return "";
}

}  // namespace

std::span<const PublishedRule> published_rules() { return rules; }

const PublishedRule* published_rule(std::string_view id) {
  const auto found = std::find_if(rules.begin(), rules.end(),
                                  [&](const auto& rule) { return rule.id == id; });
  return found == rules.end() ? nullptr : &*found;
}

Result<std::vector<const PublishedRule*>> chosen_rules(
    const std::vector<std::string>& ids, const std::string& where) {
  std::vector<const PublishedRule*> chosen;
  Errors errors;
  for (std::size_t i = 0; i < ids.size(); ++i) {
    std::string fault = id_fault(ids, i);
    if (fault.empty())
      chosen.push_back(published_rule(ids[i]));
    else
      errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("{}[{}]", where, i), std::move(fault)});
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return chosen;
}

}  // namespace sheerlap

#include "joint/rule_words.h"

#include "joint/fasteners.h"

namespace sheerlap {

std::string_view quantity_words(RuleQuantity quantity) {
  switch (quantity) {
    case RuleQuantity::GreatestPitch:
      return "greatest pitch";
    case RuleQuantity::LeastPitch:
      return "least pitch";
    case RuleQuantity::LeastEdgeDistance:
      return "least edge distance";
    case RuleQuantity::LeastEndDistance:
      return "least end distance";
    case RuleQuantity::LeastRowGap:
      return "least gap between lines of holes";
    case RuleQuantity::LeastOverlap:
      return "least overlap";
    case RuleQuantity::LeastTaper:
      return "least length of taper";
    case RuleQuantity::LeastBoltDiameter:
      break;
  }
  return "least bolt diameter";
}

std::string_view place_words(RulePlace place) {
  switch (place) {
    case RulePlace::HullToDeckAdhesive:
      return "hull to deck, bonded with structural adhesive";
    case RulePlace::HullToDeckMastic:
      return "hull to deck, bolted with mastic sealant between";
    case RulePlace::HullToDeck:
      return "hull to deck";
    case RulePlace::BelowWaterline:
      return "watertight connections below the static load waterline";
    case RulePlace::AboveWaterline:
      return "connections in the hull above the static load waterline, up to the deck";
    case RulePlace::Deckhouse:
      return "connections in deckhouses";
    case RulePlace::DeckhouseAdhesive:
      return "deckhouse to deck, bonded with structural adhesive";
    case RulePlace::DeckhouseMastic:
      return "deckhouse to deck, bolted with mastic sealant between";
    case RulePlace::AnyFastened:
      return "wherever laminates are fastened";
    case RulePlace::SteelPlate:
      return "plates of steel";
    case RulePlace::BondedLap:
      return "bonded single laps";
    case RulePlace::BondedDoubleLap:
      return "bonded double laps";
    case RulePlace::BondedScarf:
      return "bonded scarfs";
    case RulePlace::LaminatedLap:
      break;
  }
  return "laps made by laying glass over them";
}

std::string_view sureness_words(RuleSureness sureness) {
  switch (sureness) {
    case RuleSureness::Seen:
      return "read in its source";
    case RuleSureness::Memory:
      return memory_note;
    case RuleSureness::Common:
      return "common practice, no source";
    case RuleSureness::Information:
      break;
  }
  return "for information";
}

std::string_view state_words(RuleState state) {
  switch (state) {
    case RuleState::Pass:
      return "pass";
    case RuleState::Warn:
      return "warn";
    case RuleState::Fail:
      return "fail";
    case RuleState::Information:
      return "information";
    case RuleState::DoesNotApply:
      break;
  }
  return "does not apply";
}

}  // namespace sheerlap

#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// What of a joint a rule asks for.
enum class RuleQuantity {
  GreatestPitch,
  LeastPitch,
  LeastEdgeDistance,
  LeastEndDistance,
  LeastRowGap,
  LeastOverlap,
  LeastTaper,
  LeastBoltDiameter,
};

/// How a rule gives the length it asks.
enum class RuleForm {
  BoltDiameters,   ///< factor times the bolt's nominal diameter
  HoleDiameters,   ///< factor times the hole
  LipThicknesses,  ///< factor times the lip's thickness
  TaperedLip,      ///< factor times what is tapered off the lip, down to 0.51 mm
  Fixed,           ///< mm
  GasketedFlange,  ///< 2 d + 6 t / (m + 0.5); the factor is the gasket's, m
  TableByLength,   ///< the row of a table by the vessel's length
};

/// Where a rule applies.
enum class RulePlace {
  HullToDeckAdhesive,  ///< bonded with structural adhesive
  HullToDeckMastic,    ///< bolted, with mastic sealant between
  HullToDeck,          ///< with either
  BelowWaterline,      ///< watertight connections below the static load waterline
  AboveWaterline,      ///< in the hull above it, up to the deck
  Deckhouse,           ///< connections in deckhouses
  DeckhouseAdhesive,   ///< deckhouse to deck, bonded
  DeckhouseMastic,     ///< deckhouse to deck, bolted with mastic sealant
  AnyFastened,         ///< wherever laminates are fastened
  SteelPlate,          ///< plates of steel
  BondedLap,           ///< a bonded single lap
  BondedDoubleLap,
  BondedScarf,
  LaminatedLap,  ///< a lap made by laying glass over it
};

/// How surely a rule is known.
enum class RuleSureness {
  Seen,         ///< read in a copy of its source
  Memory,       ///< remembered, not read
  Common,       ///< common practice, no source
  Information,  ///< read or remembered, but made for something else
};

/// What the fasteners were for which a rule was written.
enum class WrittenFor { Bolts, AnyFastener, NoFastener };

/// One length that a rule asks.
struct RuleAsk {
  RuleQuantity quantity = RuleQuantity::GreatestPitch;
  RuleForm form = RuleForm::BoltDiameters;
  double factor = 0;  ///< of the form; not of a table
};

/// The lengths that a rule asks; more than one are used whole.
class RuleAsks {
 public:
  /// @param asks  one to three
  constexpr RuleAsks(std::initializer_list<RuleAsk> asks) : count_(asks.size()) {
    std::copy(asks.begin(), asks.end(), asks_.begin());
  }
  constexpr const RuleAsk* begin() const { return asks_.data(); }
  constexpr const RuleAsk* end() const { return asks_.data() + count_; }
  constexpr std::size_t size() const { return count_; }
  constexpr const RuleAsk& front() const { return asks_.front(); }

 private:
  std::array<RuleAsk, 3> asks_{};
  std::size_t count_;
};

/// A published rule for a joint in laminate. It is put beside the joint; whether the
/// joint keeps to it is for the builder's naval architect or class to say.
struct PublishedRule {
  std::string_view id;    ///< in our own words: "pitch_hull_to_deck_bonded"
  std::string_view what;  ///< what it asks, in words
  RulePlace place = RulePlace::AnyFastened;
  RuleAsks asks;
  RuleSureness sureness = RuleSureness::Seen;
  WrittenFor written_for = WrittenFor::Bolts;
  std::string_view source;  ///< ends in `memory_note` where it was not read
  std::span<const std::string_view> notes;
};

/// All rules that are known here, in the order in which they are shown.
std::span<const PublishedRule> published_rules();

/// A rule by its id; none if there is none.
const PublishedRule* published_rule(std::string_view id);

/// The rules of a list of ids, which a joint is then held to.
///
/// @param where  address of the list in the input, for errors: "strength.rules"
/// @errors  at "WHERE[N]": an id that is not known, with the nearest that is; one given
///          twice; a rule that is for information only
Result<std::vector<const PublishedRule*>> chosen_rules(
    const std::vector<std::string>& ids, const std::string& where);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/bond_strength.h"
#include "joint/fastener_rows.h"
#include "joint/job.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What a boat's fasteners and adhesive cost by the joint file's prices.
struct CandidateCost {
  double priced = 0;                  ///< of what has a price
  std::vector<std::string> unpriced;  ///< the items that have none

  bool known() const { return unpriced.empty(); }
};

/// The gap that lies furthest outside the adhesive's window.
struct GapOutside {
  Length by;   ///< how far; 0 if none does
  Length gap;  ///< there
  bool wide;   ///< over the window, else under it
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
};

/// How near the bits come to the hull's trimmed top edge.
struct HullClear {
  Length least;             ///< from the hole's side to that edge; negative beyond it
  std::string mark;         ///< the hole there
  std::size_t missing = 0;  ///< holes that miss the hull
};

/// What the joint comes to with a candidate.
struct CandidateFigures {
  std::size_t fasteners = 0;  ///< on a boat
  double bond_use = 0;        ///< at the worst place
  BondMode bond_mode = BondMode::AdhesiveShear;
  std::optional<FastenerRow> worst;     ///< none without a hole
  std::optional<HullClear> hull_clear;  ///< none without a hole
  GapOutside outside = {};
  std::size_t packs = 0;    ///< of adhesive, opened for a boat by itself
  std::size_t nozzles = 0;  ///< with them
  CandidateCost cost;       ///< a boat's share of the run, as in `order`

  /// The greater use, of the bond or of the fasteners.
  double use() const;
};

/// The joint's fastener and adhesive, or one of them and another in the other's place.
struct Candidate {
  std::string fastener;  ///< "tapping screw ST4.8"
  std::string adhesive;  ///< its name
  bool own_fastener = true;
  bool own_adhesive = true;
  std::optional<CandidateFigures> figures = {};  ///< none if the job cannot be worked
  std::vector<std::string> ruled_out = {};  ///< why; empty if nothing speaks against it
  std::vector<std::string> notes = {};      ///< what its figures leave out

  bool own() const { return own_fastener && own_adhesive; }
  bool workable() const { return ruled_out.empty(); }
};

using Candidates = std::vector<Candidate>;

/// The joint worked whole with every size in the tables of its kind of fastener, and
/// with every adhesive it is to be compared with.
///
/// The joint's own holes, lengths, box, price and capacities (N) belong to its own
/// size: the others have the tables' holes and lengths and no price. A candidate is
/// ruled out if its job cannot be worked, if a check of its schedule or a chosen rule
/// fails, if a gap lies outside the adhesive's window, or if a use is over 1.
///
/// @param job  with its strength
/// @returns  first those that nothing speaks against; by cost, those whose cost is
///           known first; by the greater use; equal ones as the joint file and the
///           tables have them, the joint's own first
Candidates candidates(const Job& job);

}  // namespace sheerlap

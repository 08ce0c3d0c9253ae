#pragma once

#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

enum class FitVerdict { Good, Tight, Wide, Interference };

/// A gap and where it is.
struct GapAt {
  Length gap;
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
  Length depth;
};

/// A stretch of one verdict.
struct FitRun {
  SideName side = SideName::Starboard;
  Length from;  ///< girth along the sheer, within 1e-6 mm
  Length to;
  FitVerdict verdict = FitVerdict::Good;
  /// The gap of the run that lies deepest in the verdict; in a good run the one
  /// nearest to leaving the window.
  GapAt worst;
};

/// The gaps at one row of the sheer table.
struct FitStation {
  std::string station;  ///< the row's label
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
  Point3 point;  ///< on the sheer, mm
  Length lap;
  std::vector<Length> gaps;  ///< at depth 0, lap/2 and lap
};

/// The lid on its way straight down: the least clearance, level and square to the sheer
/// in plan, between the lip's low edge and the hull's top edge, which pass each other
/// when the lid is a lap above its seat. Negative: it does not go down by itself.
struct Entry {
  Length worst;
  Length height;  ///< of the lid above its seat there
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
};

/// Where a least or greatest value is to be had, within 1e-6 mm.
struct Reach {
  std::vector<SideName> sides;  ///< in the order of the joint's
  bool all_along = false;       ///< at every girth of these sides, of one depth or any
  bool all_round = false;       ///< the same, and they are all the sides
};

struct Fit {
  Entry entry;
  Reach entry_reach;
  GapAt least;  ///< of places that are alike the first
  Reach least_reach;
  GapAt greatest;
  Reach greatest_reach;
  Length mean;  ///< by area of the hull face over the bond band
  std::vector<FitRun> runs;
  std::vector<FitStation> stations;
  Checks checks;
};

/// Whether the lid goes over the box, all the way round and down the whole lap.
///
/// The gap is measured from the hull face along its outward normal. Least and
/// greatest gap are those of the faces, refined between the rows.
///
/// @param joint  with its adhesive: the gap window is the adhesive's
/// @errors       a face that the other cannot be measured against
Result<Fit> fit(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap

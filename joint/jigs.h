#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A piece of the drill jig.
struct JigSegment {
  std::string name;  ///< J-S1, J-P1, J-T1 ...
  SideName side = SideName::Starboard;
  std::size_t first = 0;  ///< indices into the stations
  std::size_t last = 0;   ///< the next segment starts at this hole if it is shared
};

/// The length of a piece whose outer holes are `run` apart: a bush diameter of material
/// from the centre of each outer hole to the end of the piece.
/// @source  common practice, no source
Length piece_length(Length run, const JigRules& rules);

/// The greatest girth from first hole to last of a piece no longer than the rules let
/// it be; not above 0 if its ends alone are longer.
Length longest_run(const JigRules& rules);

/// The fewest pieces of jig that drill every hole, none longer on the drill line, from
/// its first hole to its last, than `run_max`.
///
/// Neighbours share one hole, by which the next is indexed, but where a corner or an
/// opening ends a piece, or where the space to the next hole is longer than a piece may
/// be.
///
/// @param stations    of the perimeter, side by side, by girth
/// @param run_max     > 0
/// @source  derived: each piece taken as long as it may be is a fewest cover
std::vector<JigSegment> jig_segments(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     Length run_max);

/// Whether a corner or an opening of the side lies between two girths of the drill
/// line.
bool parted(const PerimeterSide& side, Length from, Length to);

}  // namespace sheerlap

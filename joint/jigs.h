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

/// What a piece of jig may not pass.
struct JigLimits {
  Length run_max;     ///< > 0; on the drill line, from the first hole to the last
  Length radius_min;  ///< a bend tighter than this in plan has a piece of its own
};

/// The fewest pieces of jig that drill every hole; of as many, the longest as short as
/// it can be, within 0.1 mm.
///
/// Neighbours share one hole, by which the next is indexed, but where a corner or an
/// opening ends a piece, or where the space to the next hole is longer than a piece may
/// be. A tight bend has its own piece, from the last hole before it to the first after
/// it.
///
/// @param stations    of the perimeter, side by side, by girth
/// @source  derived: each piece taken as long as it may be is a fewest cover
std::vector<JigSegment> jig_segments(const Perimeter& perimeter,
                                     const std::vector<DrillStation>& stations,
                                     const JigLimits& limits);

/// Whether a corner or an opening of the side lies between two girths of the drill
/// line.
bool parted(const PerimeterSide& side, Length from, Length to);

}  // namespace sheerlap

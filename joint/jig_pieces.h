#pragma once

#include <cstddef>
#include <vector>

#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/jigs.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// How a bush stands in a flat plate, away from square to it.
struct BushLean {
  Angle up;     ///< above 0 if its outer end leans to the plate's upper edge
  Angle along;  ///< above 0 if its outer end leans away from the jig's first hole
};

/// A hole of a jig, as the jig is set out.
struct JigHole {
  std::size_t station = 0;  ///< index into the stations
  Length run;               ///< girth on the drill line from the jig's first hole
  Length straight;          ///< straight from the jig's first hole
  Length along_chord;       ///< from the first hole, square down onto the jig's chord
  Length off_chord;         ///< straight from the hole to the chord
  Length above_edge;        ///< least distance to the lip's low edge as drawn
  BushLean lean;            ///< in a flat plate; square in a strip bent to the lip
};

/// A piece of the jig, as it is made.
struct JigPiece {
  JigSegment segment;
  std::vector<JigHole> holes;
  Length chord;             ///< straight from the first hole to the last
  Length middle_off_chord;  ///< of the drill line, over the chord's middle
};

/// The pieces of the jig in space.
///
/// The flat plate from which a bush's lean is told holds the first and the last hole
/// and stands, across that line, as square as can be to the mean of the bits: it is
/// what a jig of rigid board is cut from.
///
/// @param stations  of the perimeter
/// @param segments  of the stations
/// @param lip_trim  what the stations' edge distances have been reduced by
std::vector<JigPiece> jig_pieces(const Perimeter& perimeter,
                                 const std::vector<DrillStation>& stations,
                                 const std::vector<JigSegment>& segments,
                                 Length lip_trim);

}  // namespace sheerlap

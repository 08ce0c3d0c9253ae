#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/fasteners.h"
#include "joint/jig_pieces.h"
#include "joint/joint.h"

namespace sheerlap {

/// Bushes of one bore in a piece of jig.
struct JigBush {
  std::string what;  ///< "pilot", "lip hole", "hole"
  Length bore;
  Length outer;
  std::size_t count = 0;
};

/// The bushes of a piece: for each hole one to guide the pilot bit and one, put in its
/// place, to guide the bit that opens the lip; one bore alone where one bit goes
/// through all.
///
/// @param stations  those the piece's holes are of; one that is not to be drilled has
///                  no bush
std::vector<JigBush> jig_bushes(const JigPiece& piece,
                                const std::vector<DrillStation>& stations,
                                const FastenerSpec& spec,
                                const JigRules& rules);

}  // namespace sheerlap

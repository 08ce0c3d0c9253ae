#pragma once

#include <vector>

#include "joint/boat.h"
#include "joint/fasteners.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What the gaps of a boat are taken from.
struct BoatSurroundings {
  const Perimeter& perimeter;  ///< the boat's
  const Schedule& schedule;    ///< likewise
  const Schedule& drawn;       ///< the drawing's, with the same holes
};

/// How a gap is known.
/// @param girth  on the drill line
Known known_at(const Boat& boat, SideName side, Length girth);

/// The gaps of a boat at its holes and where it was read, and what they ask for; by
/// side and girth.
///
/// To grind is what a gap lacks of the least allowed, to build up what it has over the
/// greatest.
///
/// @param boat  with its state, readings and limits
std::vector<PlaceGap> boat_places(const Boat& boat, const BoatSurroundings& about);

}  // namespace sheerlap

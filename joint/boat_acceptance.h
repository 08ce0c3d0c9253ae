#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/boat.h"
#include "joint/boat_places.h"
#include "joint/joint.h"

namespace sheerlap {

/// What the boats of a joint are accepted by: its own limits, or the adhesive's window.
/// @errors  at "adhesive": neither is given
Result<GapLimits> gap_limits(const Joint& joint);

/// The stretches on which a boat is out of its limits, by side and girth, numbered:
/// gaps below and above their limits anywhere down the lap, neighbouring readings of an
/// edge that differ by more than the step, holes that no fastener in stock serves.
///
/// @param boat  with its places
std::vector<NonConformance> non_conformances(const Boat& boat,
                                             const BoatSurroundings& about);

}  // namespace sheerlap

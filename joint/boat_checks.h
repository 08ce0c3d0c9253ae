#pragma once

#include "joint/boat.h"
#include "joint/check.h"

namespace sheerlap {

/// What there is to look at in a boat and in what was read of it: whether it is out of
/// its limits, and where its gap is taken from elsewhere.
///
/// @param boat  with its non-conformances
Checks boat_checks(const Boat& boat);

}  // namespace sheerlap

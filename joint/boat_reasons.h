#pragma once

#include "joint/boat.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why the figures of a boat are what they are, in the order of the result.
Explanations boat_reasons(const Boat& boat);

}  // namespace sheerlap

#pragma once

#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/length_text.h"

namespace sheerlap {

/// Where a joint contradicts itself: limits that cross, a drill line or a bond band
/// deeper than the lap, a stretch that ends before it starts, a thing that stands
/// twice. Each value for itself is taken to be in range; NaN contradicts nothing.
///
/// An interference of lip and hull is no contradiction.
///
/// @param joint  may have no rows
/// @param unit   of the lengths in the messages
/// @returns  InvalidInput each, at the address of the value to mend
Errors contradictions(const Joint& joint, LengthUnit unit);

}  // namespace sheerlap

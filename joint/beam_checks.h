#pragma once

#include "joint/check.h"
#include "joint/perimeter.h"
#include "joint/seating.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// Whether the beam readings can be of the hull that is drawn: the beam in the mould
/// beside the drawn one over the top edge there, and the free beam beside the mould's.
///
/// @param seating  of these readings
Checks beam_checks(const SeatingInputs& inputs,
                   const Seating& seating,
                   const Perimeter& perimeter);

}  // namespace sheerlap

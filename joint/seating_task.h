#pragma once

#include "geometry/result.h"
#include "joint/hull_movement.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/seating_inputs.h"
#include "joint/seating_search.h"

namespace sheerlap {

/// What is to be sought: the gap every 10 mm along the joint and at every row, at both
/// edges of the lap, in the adhesive's window.
///
/// @param joint      with its adhesive
/// @param perimeter  its lip face is referred to
/// @param free       the hull's free shape
/// @errors  at "spreader[N].x": a place that is not on both sides, or is given twice
Result<SeatingTask> seating_task(const Joint& joint,
                                 const SeatingInputs& inputs,
                                 const Perimeter& perimeter,
                                 const HullMovement& free);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/readings_gap.h"

namespace sheerlap {

/// The perimeter of one boat: sheer, lip and drill line are those of the drawing, and
/// the hull face stands where the gap is as corrected.
///
/// At each correction the gap at the top and at the low edge is that of the base and
/// the correction, to 1e-6 mm. Between them the hull's offsets change straight along
/// the girth of the sheer, beyond the first and last of a side they change as there.
/// Where two sides meet the hull face may have a step.
///
/// @param base  what the corrections are of: the joint's own perimeter, or a boat's
/// @errors  at "readings": a hull face from which no gap can be measured; as
/// `perimeter`
Result<Perimeter> boat_perimeter(const Joint& joint,
                                 const Perimeter& base,
                                 const std::vector<SideCorrections>& corrections);

}  // namespace sheerlap

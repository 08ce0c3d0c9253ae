#pragma once

#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/pitch_limits.h"

namespace sheerlap {

/// The greatest spaces that the strength allows along the drill line.
///
/// Three limits, each where it is known: what the fasteners carry alone at the load and
/// the edge distances there; the space at which the wet lip bows by what is allowed;
/// the pitch of the chosen rules. A space that the fasteners bear at a place is borne
/// by every hole that may stand within half of it. It is looked at where the load or
/// the gap jumps and no further apart than 25 mm, straight between. The first hole from
/// a corner, an opening or an end stands no further from it than half of a space, since
/// it carries all of the way; where end_min keeps it further, the next space is less.
///
/// @errors  of `strength_lacks`, the loads, the rules, the fastener and its class; at
///          "layout.pitch_max": nothing limits a space anywhere
Result<PitchLimits> strength_pitch(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap

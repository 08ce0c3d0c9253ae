#pragma once

#include <vector>

#include "joint/check.h"
#include "joint/layout_stretches.h"
#include "joint/pitch_limits.h"

namespace sheerlap {

/// Makes a stretch hold limits beside the joint file's own.
///
/// A zone of the spacing problem holds in place of the common limits. So the ground is
/// cut at the edges of all limits and zones, and each part whose tightest limit is less
/// than what the joint file allows there becomes a zone with that as its greatest space
/// and the least one that held before. Where no limit is the tighter one nothing is
/// added, and a user's zone stays as it is: a part within it has its least space and no
/// more than its greatest, so that the two together are the part's own limits.
///
/// A limit below the least space there gives way to it: the part's spaces are of the
/// least size.
void hold_limits(LayoutStretch& stretch, const std::vector<PitchLimit>& limits);

/// Lets the first hole from each end of a stretch stand no further from it than the
/// limits given for that end, but as far as the joint file's end_min in any case; no
/// effect on an end that is a mirror.
void hold_ends(LayoutStretch& stretch, const std::vector<EndLimit>& ends);

/// The limits of a stretch that gave way to the least space, from girth to girth as one
/// failed check each.
Checks given_way_checks(SideName side, const LayoutStretch& stretch);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "joint/bead_runs.h"
#include "joint/boat.h"

namespace sheerlap {

/// The stretches on which two sets of runs on one sheer have other beads, by side and
/// girth; those shorter than 0.01 mm, which are rounding, left out.
///
/// @param drawn  of the drawing, every stretch of joint once
/// @param runs   of the boat, likewise
std::vector<BeadChange> bead_changes(const std::vector<BeadRun>& drawn,
                                     const std::vector<BeadRun>& runs);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/candidates.h"

namespace sheerlap {

/// What speaks against a fastener and an adhesive whose job was worked: failed checks
/// of the schedule and chosen rules, a gap outside the window, a use over 1.
///
/// What the choice has no part in is left out: bridged spaces, and jigs, whose bushes
/// go by the hole.
///
/// @param job  with fit, schedule and strength
std::vector<std::string> candidate_faults(const Job& job, const GapOutside& outside);

}  // namespace sheerlap

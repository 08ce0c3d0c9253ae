#pragma once

#include "joint/going_on.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// How the figures of the ways down and of the best seating come about.
/// @param joint  with its adhesive
Explanations seating_reasons(const Joint& joint, const GoingOn& going_on);

}  // namespace sheerlap

#pragma once

#include "joint/reasons/reason.h"
#include "joint/seated_joint.h"

namespace sheerlap {

/// The reasons of what follows from a seating: `seating.follows`.
Explanations seated_reasons(const SeatedJoint& joint);

}  // namespace sheerlap

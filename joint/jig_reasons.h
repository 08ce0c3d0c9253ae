#pragma once

#include "joint/joint.h"
#include "joint/reasons/reason.h"
#include "joint/schedule.h"

namespace sheerlap {

/// Why the pieces of the jig are what they are, told of the first.
Explanations jig_reasons(const Joint& joint, const Schedule& schedule);

/// How the dimensions are had that prove a setting-out.
Explanations check_line_reasons(const Schedule& schedule);

}  // namespace sheerlap

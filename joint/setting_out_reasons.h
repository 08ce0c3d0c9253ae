#pragma once

#include "joint/joint.h"
#include "joint/reasons/reason.h"
#include "joint/schedule.h"

namespace sheerlap {

/// Why holes are off by what they are, and what parts drilled apart would need.
Explanations setting_out_reasons(const Joint& joint, const Schedule& schedule);

}  // namespace sheerlap

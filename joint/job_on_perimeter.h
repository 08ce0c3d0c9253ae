#pragma once

#include "joint/job.h"

namespace sheerlap {

/// Works out the parts asked for on the joint's own perimeter, worked before: for
/// joints that differ in fastener and adhesive alone.
///
/// @errors  as `work_out`
Result<Job> work_out_on(Joint joint, const Perimeter& perimeter, const Parts& parts);

}  // namespace sheerlap

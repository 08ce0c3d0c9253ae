#pragma once

#include "joint/job.h"
#include "joint/tolerance.h"

namespace sheerlap {

/// A joint and how many of its boats will fit.
struct ToleranceJob {
  Job job;  ///< of the perimeter alone, with the checks and the reasons of both
  Tolerance tolerance;
};

/// Works out the tolerance of a joint and all that it needs.
///
/// @errors  of the perimeter, the adhesive, the schedule and `tolerance`; at
///          "tolerance", "adhesive": a table that is missing
Result<ToleranceJob> tolerance_job(Joint joint, const ToleranceHooks& hooks);

/// What keeps a joint's tolerance from being worked out, found on a single boat; none of
/// a joint without [tolerance] or without [adhesive].
Errors tolerance_faults(Joint joint);

}  // namespace sheerlap

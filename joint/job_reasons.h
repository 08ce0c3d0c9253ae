#pragma once

#include "joint/job.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why the figures of a job's parts are what they are, in the order of the result.
///
/// Each explanation says which numbers of the result it tells of, `Explanation::tells`.
///
/// @param job  as `work_out` gives it
Explanations reasons_of(const Job& job);

}  // namespace sheerlap

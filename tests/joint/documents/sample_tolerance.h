#pragma once

#include "joint/tolerance_job.h"

namespace sheerlap {

/// Boats made up by hand, every part filled, on the joint of `sample_job` with a
/// spreader and two errors; its numbers are simple, need not fit together, and are told
/// in the tests that use them.
ToleranceJob sample_tolerance();

}  // namespace sheerlap

#pragma once

#include "joint/job.h"

namespace sheerlap {

/// A job made by hand, every part filled, two sides and a transom; its numbers are
/// simple, need not fit together, and are told in the tests that use them.
Job sample_job();

/// One with names as long and numbers as wide as a joint file lets them be.
Job wide_job();

}  // namespace sheerlap

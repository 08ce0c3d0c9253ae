#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/tolerance_job.h"

namespace sheerlap {

/// How many boats in a hundred will fit, for people: how they go on, where they are
/// tight or wide, what they take, what the run takes, and which error drives what.
std::string tolerance_text(const ToleranceJob& job, const NumberStyle& style);

/// The checks' verdict and how many of 100 boats go on, in one line.
std::string tolerance_verdict(const ToleranceJob& job);

/// The verdict of made-up boats in one sentence: how many of 100 go on.
std::string going_on_line(const ToleranceJob& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/tolerance_job.h"

namespace sheerlap {

/// What boats as they are take of adhesive, and what to buy for the run.
std::string tolerance_adhesive_text(const ToleranceJob& job, const NumberStyle& style);

/// Of each answer's variance, what every error brings.
std::string tolerance_drives_text(const ToleranceJob& job, const NumberStyle& style);

/// The errors that the boats were made up by.
std::string tolerance_errors_text(const ToleranceJob& job, const NumberStyle& style);

/// What was taken for granted, and what was not looked at.
std::string tolerance_limits_text(const ToleranceJob& job);

}  // namespace sheerlap

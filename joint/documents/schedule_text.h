#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The drilling schedule: side by side where the holes are and how each is drilled,
/// then the jigs, the dimensions to check by, and the fasteners by length.
/// @param job  with its schedule
std::string schedule_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// One boat as it was read: how its gap is known, what differs from the drawing, where
/// it is out of its limits, and what there is to do about it, hole by hole. Of what
/// differs it tells what belongs to the job's parts.
///
/// @param job  with its boat
std::string boat_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

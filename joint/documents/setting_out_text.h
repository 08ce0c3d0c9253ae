#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What a hole is off by, however it is set out and drilled, and the holes that a lip
/// and a hull drilled apart would need.
/// @param job  with its schedule
std::string setting_out_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

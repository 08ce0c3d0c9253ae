#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The jigs, piece by piece: holes, bushes, flat pattern; then what a hole is off by.
/// @param job  with its layout and schedule
std::string jigs_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

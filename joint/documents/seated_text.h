#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What follows from the best seating: fit, adhesive and fasteners beside those of the
/// lid as drawn; empty where nothing is known to follow.
/// @param job  with its fit and how the lid goes on
std::string seated_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

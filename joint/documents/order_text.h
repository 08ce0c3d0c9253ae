#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What to buy for the run of boats, with every allowance as a line of its own.
/// @param job  with its order
std::string order_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

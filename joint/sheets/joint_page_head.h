#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What the page opens with: the checks that fail or warn, the verdict of the fit in
/// words, units and surfaces, and the cautions.
/// @param job  with its schedule
std::string page_head(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// Where the fasteners go and why: runs, bridged stretches and every hole, by sides.
/// @param job  with its layout
std::string layout_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "joint/documents/json_parts.h"
#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/joint_page_holes.h"

namespace sheerlap {

/// What the page's script needs beyond the page's own text: whose layout it is, the
/// adhesive's window, and of each hole its section, mm to 0.001 mm.
///
/// @param job    with its schedule
/// @param holes  of the job
Json page_data(const Job& job,
               const std::vector<PageHole>& holes,
               const NumberStyle& style);

}  // namespace sheerlap

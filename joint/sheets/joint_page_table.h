#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/joint_page_holes.h"

namespace sheerlap {

/// The schedule as a table to search, a row a hole; its last columns are for what is
/// read and ticked off on the boat.
///
/// @param job    with its schedule
/// @param holes  of the job
std::string schedule_table(const Job& job,
                           const std::vector<PageHole>& holes,
                           const NumberStyle& style);

/// The keep-outs and openings as a table.
/// @param job  with its layout
std::string stretch_table(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

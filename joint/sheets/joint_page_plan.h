#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/joint_page_holes.h"

namespace sheerlap {

/// The plan of a joint as SVG, one unit a mm of the boat, x aft to the right, y to
/// starboard up: sheer, drill line, keep-outs, openings, corners, the stretches of the
/// fit, and every hole as an element to choose.
///
/// @param holes  of the job
std::string plan_svg(const Job& job,
                     const std::vector<PageHole>& holes,
                     const NumberStyle& style);

/// A line of the legend that tells of tight bends, if the plan has any.
std::string bend_legend(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

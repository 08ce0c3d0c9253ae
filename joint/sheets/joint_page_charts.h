#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/joint_page_holes.h"

namespace sheerlap {

/// One side's chart as SVG, along the sheer's girth: the gap at the hull's top edge, at
/// the middle of the lap and at the lip's low edge, the adhesive's window, the beads,
/// and every hole as an element to choose.
///
/// @param job    with its fit
/// @param holes  of the job
std::string side_chart(const Job& job,
                       const PerimeterSide& side,
                       const std::vector<PageHole>& holes,
                       const NumberStyle& style);

}  // namespace sheerlap

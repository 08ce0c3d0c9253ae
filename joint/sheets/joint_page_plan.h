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

/// The letter of a verdict in plan and charts: G, T, W or X.
char verdict_letter(FitVerdict verdict);

/// The runs of a side, those too short to be drawn joined to the ones beside them,
/// which take the worse verdict.
std::vector<FitRun> drawn_runs(const Fit& fit, SideName side, Length shortest);

}  // namespace sheerlap

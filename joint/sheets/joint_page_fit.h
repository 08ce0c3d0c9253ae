#pragma once

#include <string>
#include <vector>

#include "joint/fit.h"
#include "joint/sheets/joint_page_drawing.h"

namespace sheerlap {

/// The letter of a verdict in plan and charts: G, T, W or X.
char verdict_letter(FitVerdict verdict);

/// The runs of a side, those too short to be drawn joined to the ones beside them,
/// which take the worse verdict.
std::vector<FitRun> drawn_runs(const Fit& fit, SideName side, Length shortest);

/// The stretches of a side's fit in plan, inboard of the sheer, by line and letter;
/// empty if the job has no fit.
std::string fit_stretches(PlanDrawing& plan, const PerimeterSide& side);

}  // namespace sheerlap

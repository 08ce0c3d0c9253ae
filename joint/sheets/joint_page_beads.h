#pragma once

#include <string>
#include <vector>

#include "joint/adhesive.h"
#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The beads of a side, those too short to be drawn joined to the ones before, which
/// take the larger section.
std::vector<BeadRun> drawn_beads(const AdhesivePlan& plan,
                                 SideName side,
                                 Length shortest);

/// "18", or "2 of 20" side by side.
std::string bead_name(const BeadRun& run, const NumberStyle& style);

/// The beads of a side in words; empty if the job has no adhesive plan.
std::string bead_words(const Job& job, SideName side, const NumberStyle& style);

}  // namespace sheerlap

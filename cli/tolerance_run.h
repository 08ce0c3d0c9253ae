#pragma once

#include "cli/joint_file.h"
#include "cli/options.h"
#include "joint/documents/report.h"

namespace sheerlap {

/// Makes up the boats of a joint file and tells of them: a line on the terminal while
/// it runs, and on Ctrl-C what is done so far.
///
/// @returns  the exit status: 1 if a check fails or not all boats were done
int run_tolerance(const Options& options, JointFile file, const ReportStyle& style);

}  // namespace sheerlap

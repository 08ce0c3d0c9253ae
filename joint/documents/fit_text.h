#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/documents/text_table.h"
#include "joint/job.h"

namespace sheerlap {

/// Whether the lid goes over the box: least, greatest and mean gap, where the verdict
/// changes, and the gaps at the stations.
/// @param job  with its fit
std::string fit_text(const Job& job, const NumberStyle& style);

/// Its least, greatest and mean gap and the way down, as a table.
TextTable fit_extremes(const Fit& fit, const NumberStyle& style);

/// Its stretches of one verdict, one a row, as a table.
TextTable fit_runs(const Fit& fit, const NumberStyle& style);

}  // namespace sheerlap

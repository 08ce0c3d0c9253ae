#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// How each hole of a side is drilled, as a table.
/// @param job  with its schedule
std::string drilling_table(const Job& job, SideName side, const NumberStyle& style);

/// The order of work, the depth stops, and what the columns of the table are.
/// @param job  with its schedule
std::string drilling_notes(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

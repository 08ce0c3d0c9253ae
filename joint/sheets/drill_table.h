#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/page_table.h"

namespace sheerlap {

/// The holes of a side as a table to drill and to sign by, jig by jig, with blank
/// columns for what was done. Spaces over their limit, corners, openings and holes that
/// are not to be drilled have rows of their own.
///
/// @param job  with its layout and schedule
PageTable drill_table(const Job& job, SideName side, const NumberStyle& style);

/// Why a hole is where it is, in a few words: of a row of equal spaces only the first
/// says between what they are.
std::string short_reason(const std::string& because);

}  // namespace sheerlap

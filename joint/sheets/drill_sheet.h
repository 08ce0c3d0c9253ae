#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// Whether a job has a drilling schedule for a side.
bool has_drill_sheet(const Job& job, SideName side);

/// The drilling schedule of one side as a PDF to work by and to sign: what it is for
/// and how to mark out and drill, the holes jig by jig with room for what was done, the
/// dimensions to check by, and the count that must come out.
///
/// @param job  with its layout and schedule
/// @errors  Unreadable: the font is not installed
Result<std::string> drill_sheet(const Job& job, SideName side, const SheetStyle& style);

}  // namespace sheerlap

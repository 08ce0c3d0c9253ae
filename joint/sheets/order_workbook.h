#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The order and its allowances as a workbook (Office Open XML) whose formulas follow
/// its inputs: boats, allowances, packs, prices, spares, boxes and shelf life.
///
/// What its formulas come to is written with them and is the program's own result. The
/// beads follow the squeeze-out as `SectionBands` says. User's text is written as text,
/// whatever it starts with. The same job gives the same bytes.
///
/// @param job  with its adhesive plan, schedule and order
/// @errors  Unreadable: no temporary file can be written or read
/// @source  ISO/IEC 29500-1 (the file format), by way of a library
Result<std::string> order_workbook(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

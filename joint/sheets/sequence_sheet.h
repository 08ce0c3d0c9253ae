#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The day of bonding for the crew, a record after the other: the adhesive, its beads
/// by girth and by mark and its clock, where the joint file has an adhesive; the order
/// in which the fasteners are driven; the leak-test map; the sign-off.
///
/// @param job  with its schedule
/// @errors  Unreadable: the font is not installed
Result<std::string> sequence_sheet(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

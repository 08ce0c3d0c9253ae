#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The drawing of a joint for the tooling engineer, on A3 or ANSI B: the general
/// arrangement, the sides expanded along the drill line, and sections through the lap
/// with the perimeter, the fit and notes. All of it is drawn from the faces and the
/// schedule, nothing from rounded text.
///
/// @param job  with its layout and schedule; the fit is drawn if it is there
/// @errors  Unreadable: the font is not installed
Result<std::string> drawing(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

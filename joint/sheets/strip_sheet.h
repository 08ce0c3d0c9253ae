#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The strip of a side, at full size, on tiles of the shop's small paper: laid on the
/// lip's outer face, each hole is pricked through it. A cover says how it is used.
///
/// @param job  `has_strip` of that side
/// @returns  the bytes of a PDF
/// @errors  Unreadable: the font is not installed
Result<std::string> strip_sheet(const Job& job, SideName side, const SheetStyle& style);

}  // namespace sheerlap

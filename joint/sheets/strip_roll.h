#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// A page of a roll is no longer, mm.
/// @source  PDF Reference, implementation limits: 14400 units of 1/72 in, 5080 mm; from
///          memory, confirm
inline constexpr double longest_roll_mm = 5000;

/// The strip of a side, at full size, on long pages for a printer that takes paper off
/// a roll: its stretches end to end, on as few pages as it needs.
///
/// @param job  `has_strip` of that side
/// @returns  the bytes of a PDF
/// @errors  Unreadable: the font is not installed
Result<std::string> strip_roll(const Job& job, SideName side, const SheetStyle& style);

}  // namespace sheerlap

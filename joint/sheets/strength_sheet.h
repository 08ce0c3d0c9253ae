#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The strength of the joint as an engineer's calculation: what bond and fasteners use
/// at their worst places, charts and tables of all places, published rules beside the
/// joint, clamping, the workings, and what is remembered or lies outside a formula's
/// validity.
///
/// @param job  with its strength
/// @errors  Unreadable: the font is not installed
Result<std::string> strength_sheet(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

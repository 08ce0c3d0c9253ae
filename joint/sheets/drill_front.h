#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// The side as a sheet for the shop says it: "STARBOARD".
std::string drill_side_words(SideName side);

/// The first sheet of a drilling schedule: what it is for, which bits and how many
/// holes, how to mark out and drill, cautions.
/// @param job  with its layout and schedule
void draw_drill_front(SheetFlow& flow,
                      const Job& job,
                      SideName side,
                      const NumberStyle& style);

}  // namespace sheerlap

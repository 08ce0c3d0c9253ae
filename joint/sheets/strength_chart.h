#pragma once

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// The use of the bond along the girth, a chart for each side, to one scale of use: the
/// limit, the worst place, where the load jumps and what loads a part of the side,
/// where the gap is a wedge, and openings.
/// @param job  with its strength
void draw_bond_use(SheetFlow& flow, const Job& job, const NumberStyle& style);

/// The use of the fasteners alone, a bar for each hole, a chart for each side.
/// @param job  with its strength
void draw_fastener_use(SheetFlow& flow, const Job& job);

}  // namespace sheerlap

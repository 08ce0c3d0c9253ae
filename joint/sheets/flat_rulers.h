#pragma once

#include "joint/sheets/drawn_sheet.h"
#include "joint/sheets/flat_side.h"

namespace sheerlap {

/// Draws what stands below a side laid flat: the runs of equal spaces and the bridged
/// spaces, which are marked on the drill line too, the girth, the zones and the jigs.
void draw_flat_rulers(DrawnSheet& sheet, const FlatSide& flat);

}  // namespace sheerlap

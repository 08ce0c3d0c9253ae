#pragma once

#include <vector>

#include "joint/documents/number_style.h"
#include "joint/sheets/sheet_flow.h"
#include "joint/sheets/strip_notes.h"

namespace sheerlap {

/// The cover of a tiled strip: what to measure, how to join and use it, and what its
/// signs mean.
void draw_strip_cover(SheetFlow& flow,
                      SideName side,
                      const std::vector<StripSheets>& sheets,
                      const NumberStyle& style);

}  // namespace sheerlap

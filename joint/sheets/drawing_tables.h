#pragma once

#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// The perimeter, the fit and notes, side by side in a box; of stretches of the fit as
/// many as there is room for.
void draw_tables(DrawnSheet& sheet, const Box& box);

}  // namespace sheerlap

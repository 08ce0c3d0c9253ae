#pragma once

#include <string>

#include "joint/job.h"
#include "joint/sheets/drawn_sheet.h"
#include "joint/sheets/sheet_frame.h"

namespace sheerlap {

/// The scale of the general arrangement on a sheet of that size.
DrawingScale arrangement_scale(const Job& job, LengthUnit unit, PageSize size);

/// The general arrangement: profile and plan, one over the other as the projection has
/// it, with the overall dimensions and what the lines mean.
void draw_arrangement(DrawnSheet& sheet, Projection projection);

}  // namespace sheerlap

#pragma once

#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// The scale of the sections.
DrawingScale section_scale(const Job& job, LengthUnit unit, PageSize size);

/// Sections through the lap, and below them the perimeter, the fit and notes.
void draw_sections(DrawnSheet& sheet);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// What one expanded side takes of a sheet, top to bottom (mm).
inline constexpr double expanded_side_mm = 76;
/// The lap is no higher than this on the sheet.
inline constexpr double expanded_lap_mm = 12;

/// Draws one side laid flat.
///
/// @param view  of girth across and minus the depth up; mirrored where the girth runs
///              to the left
void draw_expanded_side(DrawnSheet& sheet, const PerimeterSide& side, const View& view);

/// How far below the top of what a side takes its sheer lies.
inline constexpr double expanded_sheer_mm = 26;

}  // namespace sheerlap

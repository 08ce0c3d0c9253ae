#pragma once

#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// Room that a plan takes around the boat's own extent, on paper (mm).
inline constexpr double plan_room_mm = 16;

/// The centreline and the way to the bow.
void draw_plan_axes(DrawnSheet& sheet, const View& view);

/// The joint seen from above, bow to the left: sheer, drill line and holes with their
/// marks, keep-outs hatched inboard, openings, corners, and where the gap is out of its
/// window by lines outboard. What is drawn beside the sheer is that far off on paper,
/// not on the boat.
///
/// @param view  of x across and y up
void draw_plan(DrawnSheet& sheet, const View& view);

}  // namespace sheerlap

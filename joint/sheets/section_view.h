#pragma once

#include "joint/sheets/drawn_sheet.h"
#include "joint/sheets/lap_section.h"

namespace sheerlap {

/// How much of the hull is drawn, in depths of the lap: carried on below it.
inline constexpr double section_hull_share = 1.2;
/// How much of the lip is drawn over the sheer.
inline constexpr double section_lip_share = 0.1;

/// Draws a section, outboard to the right, with its dimensions: the lap, the drill
/// line, the edge distances, the thicknesses and the gap.
///
/// @param view  of outboard across and up
void draw_section(DrawnSheet& sheet, const SectionPlace& place, const View& view);

}  // namespace sheerlap

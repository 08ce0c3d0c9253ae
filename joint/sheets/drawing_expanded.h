#pragma once

#include "joint/sheets/drawn_sheet.h"

namespace sheerlap {

/// The scales of the expanded sides: along the drill line, the same for all sides, and
/// down the lap.
struct ExpandedScales {
  DrawingScale along;
  DrawingScale depth;

  std::string words() const;  ///< "1:20, depth 1:5"
};
ExpandedScales expanded_scales(const Job& job, LengthUnit unit, PageSize size);

/// The sides laid flat along the drill line, each seen from outboard: holes and their
/// marks, keep-outs, openings, corners, fixed places and stretches out of the gap's
/// window in the lap; below it the runs of equal spaces, the girth, zones and jigs.
/// Starboard has its bow to the right, port to the left, the transom port to the left.
void draw_expanded(DrawnSheet& sheet);

}  // namespace sheerlap

#pragma once

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/sheets/strip_line.h"
#include "joint/sheets/strip_tiles.h"

namespace sheerlap {

/// The line across the strip along which two tiles are joined.
struct SeamLine {
  Point2 on_line = {0, 0};  ///< on the drill line
  Vector2 up = {0, 1};      ///< unit, square to it, to the sheer
  double above_mm = 0;      ///< from there to the mark above the sheer
  double below_mm = 0;      ///< and to the one below the low edge
};

SeamLine seam_line(const StripLine& strip, Length girth);

/// Adds the seams between neighbouring tiles to both of them: across the strip in every
/// row, and along it between rows. Marks lie beyond the strip's edges, or as near to
/// them as the rows let both tiles show them.
void add_seams(const StripLine& strip, StripTiles& tiles);

}  // namespace sheerlap

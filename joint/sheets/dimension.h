#pragma once

#include <string>

#include "geometry/points.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// A dimension of two points of a view: its line, arrowheads, the lines that lead to it
/// from the points, and its words above it, read from below or from the right. Where
/// there is no room between the points the heads stand outside, and so do the words, on
/// the side of `to`.
///
/// @source  ISO 129-1, dimension lines and extension lines: from memory, confirm
struct Dimension {
  Point2 from;
  Point2 to;
  std::string words;
  double height_mm = letter_height::least;  ///< of the words' capitals
};

/// Of the distance across the sheet, its line at a height on the sheet.
void draw_level_dimension(Page& page, const Dimension& dimension, double line_y);

/// Of the distance up the sheet, its line at a place across the sheet.
void draw_upright_dimension(Page& page, const Dimension& dimension, double line_x);

/// Of the distance itself, its line parallel to it, so far to the left of the way from
/// `from` to `to` as it is seen; below 0 to the right.
void draw_aligned_dimension(Page& page, const Dimension& dimension, double away_mm);

}  // namespace sheerlap

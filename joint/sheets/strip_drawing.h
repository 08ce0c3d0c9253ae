#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/sheets/page.h"
#include "joint/sheets/strip_content.h"
#include "joint/sheets/strip_tiles.h"

namespace sheerlap {

/// Marks of holes closer than this stand above and below the drill line by turns.
inline constexpr Length close_holes = Length::mm(20);

/// A tile's piece of a strip on a page.
struct StripView {
  Page& page;
  Box window;  ///< where on the page the tile's window is
  const StripStretch& stretch;
  const StripTile& tile;
  const NumberStyle& style;
  std::string title;  ///< of the joint

  Point2 on_page(const Point2& flat) const {
    return Point2(window.left, window.top) + tile.pose.in_window(flat);
  }
  Point2 at(StripEdge edge, Length girth) const {
    return on_page(stretch.line.at(edge, girth));
  }
  /// To the sheer, on the page, square to the drill line; unit.
  Vector2 up(Length girth) const;
  /// Of words that run along the drill line.
  double turn_degrees(Length girth) const;
  /// Whether the marks of holes stand above the drill line: where there is more room.
  bool marks_above() const;
};

/// Draws the strip within the window, at full size, with its seams.
void draw_strip(const StripView& view);

/// A hole to be pricked through: a circle of its diameter and a cross whose middle is
/// left clear; one not to be drilled is crossed out.
/// @param turn_degrees  of the cross
void draw_strip_hole(Page& page,
                     Point2 at,
                     const StripHole& hole,
                     double turn_degrees = 0);

/// A mark by which tiles are joined.
void draw_register_mark(Page& page, Point2 at);

/// How parts of a strip are hatched.
Hatch band_hatch(StripBand::Kind kind);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/sheets/box.h"
#include "joint/sheets/strip_line.h"

namespace sheerlap {

namespace strip_room {
/// Neighbouring tiles show this much of the strip both.
inline constexpr double overlap_mm = 24;
inline constexpr double row_overlap_mm = 40;
/// Above the sheer and below the low edge, for words and register marks.
inline constexpr double edge_mm = 16;
/// Beyond the strip's ends.
inline constexpr double end_mm = 14;
/// What is whole of a hole with its mark: this far along and across the drill line.
inline constexpr double hole_along_mm = 8;
inline constexpr double hole_across_mm = 18;
inline constexpr double mark_radius_mm = 3;
}  // namespace strip_room

/// How a piece of the flat strip lies in its tile's window: y down from the window's
/// top left corner.
struct TilePose {
  Vector2 right = {1, 0};  ///< unit, on the strip: the way to the window's right
  Point2 corner = {0, 0};  ///< of the strip, at the window's top left

  Vector2 up() const { return {-right.y(), right.x()}; }
  Vector2 turned(const Vector2& way) const { return {way.dot(right), -way.dot(up())}; }
  Point2 in_window(const Point2& point) const { return turned(point - corner); }
};

/// Where two neighbouring tiles are joined: on both its two marks are at the same
/// points of the strip. The tile of the higher number is cut along the line through
/// them and laid over the other.
struct TileSeam {
  std::size_t under = 0;  ///< numbers of the tiles
  std::size_t over = 0;
  Point2 a = {0, 0};  ///< on the flat strip
  Point2 b = {0, 0};

  std::string name(char mark) const;  ///< "1|2 A"
};

/// What of the strip is on one sheet.
struct StripTile {
  std::size_t number = 1;
  std::size_t column = 0;  ///< along the strip, by girth
  std::size_t row = 0;     ///< from the top, of a strip too deep for one sheet
  Length from;             ///< girths on the drill line that the column shows
  Length to;
  TilePose pose;
  Box drawn;                       ///< of the whole column, in the window
  std::vector<std::size_t> holes;  ///< indices of those whole on this tile
  std::vector<TileSeam> seams;
};

/// The window of a sheet in which the strip is drawn.
struct TileRoom {
  double width_mm = 0;
  double height_mm = 0;
};

struct StripTiles {
  TileRoom room;
  std::size_t rows = 1;
  std::size_t columns = 1;
  std::vector<StripTile> tiles;  ///< column by column, each from the top
};

/// A strip in as few tiles as it takes, of lengths as even as can be.
///
/// Each column is turned so that its piece of the drill line is level between its
/// ends. A strip too deep for the window takes rows. Seams keep clear of holes where
/// the spaces leave room; a hole cut off by a tile is whole on the next.
///
/// @param holes  girths on the drill line
/// @param room   wider than four overlaps and higher than two row overlaps
/// @param first_number  of the first tile
StripTiles strip_tiles(const StripLine& strip,
                       const std::vector<Length>& holes,
                       const TileRoom& room,
                       std::size_t first_number = 1);

}  // namespace sheerlap

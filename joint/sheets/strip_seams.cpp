#include "joint/sheets/strip_seams.h"

#include <algorithm>

namespace sheerlap {
namespace {

using namespace strip_room;

/// From the edge of the strip to the middle of a mark.
constexpr double mark_away_mm = 8;
/// A mark keeps this far from the window's edges.
constexpr double inset_mm = mark_radius_mm + 1;
/// The marks between rows stand this far from the window's sides.
constexpr double row_mark_mm = 40;

/// How far up the seam's line a window shows marks, and how far down.
void limit(const SeamLine& seam,
           const StripTile& tile,
           double height_mm,
           double& above,
           double& below) {
  const double middle = tile.pose.in_window(seam.on_line).y();
  const double rate = -tile.pose.turned(seam.up).y();
  above = std::min(above, (middle - inset_mm) / rate);
  below = std::min(below, (height_mm - inset_mm - middle) / rate);
}

TileSeam across(const StripLine& strip,
                const StripTiles& tiles,
                const StripTile& under,
                const StripTile& over) {
  const SeamLine seam = seam_line(strip, under.to - Length::mm(overlap_mm / 2));
  double above = seam.above_mm, below = seam.below_mm;
  for (const StripTile* tile : {&under, &over})
    limit(seam, *tile, tiles.room.height_mm, above, below);
  return {under.number, over.number, seam.on_line + above * seam.up,
          seam.on_line - below * seam.up};
}

TileSeam between_rows(const StripTiles& tiles,
                      const StripTile& under,
                      const StripTile& over) {
  const double down = tiles.room.height_mm - row_overlap_mm / 2;
  const auto on_strip = [&](double right) -> Point2 {
    return under.pose.corner + right * under.pose.right - down * under.pose.up();
  };
  return {under.number, over.number, on_strip(row_mark_mm),
          on_strip(tiles.room.width_mm - row_mark_mm)};
}

}  // namespace

SeamLine seam_line(const StripLine& strip, Length girth) {
  SeamLine seam;
  seam.on_line = strip.at(StripEdge::DrillLine, girth);
  const Vector2 along = strip.along(girth);
  seam.up = (strip.runs_left() ? -1.0 : 1.0) * Vector2(-along.y(), along.x());
  seam.above_mm =
      mark_away_mm + (strip.at(StripEdge::Sheer, girth) - seam.on_line).dot(seam.up);
  seam.below_mm =
      mark_away_mm + (seam.on_line - strip.at(StripEdge::Low, girth)).dot(seam.up);
  return seam;
}

void add_seams(const StripLine& strip, StripTiles& tiles) {
  const auto join = [](StripTile& under, StripTile& over, const TileSeam& seam) {
    under.seams.push_back(seam);
    over.seams.push_back(seam);
  };
  for (std::size_t i = 0; i < tiles.tiles.size(); ++i) {
    StripTile& tile = tiles.tiles[i];
    if (tile.row + 1 < tiles.rows) {
      StripTile& below = tiles.tiles[i + 1];
      join(tile, below, between_rows(tiles, tile, below));
    }
    if (tile.column + 1 < tiles.columns) {
      StripTile& next = tiles.tiles[i + tiles.rows];
      join(tile, next, across(strip, tiles, tile, next));
    }
  }
}

}  // namespace sheerlap

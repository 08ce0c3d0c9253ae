#include "joint/sheets/strip_tiles.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <optional>

#include "joint/sheets/strip_seams.h"

namespace sheerlap {
namespace {

using namespace strip_room;

/// No piece is shorter, but for a strip that is shorter itself.
constexpr double shortest_mm = 3 * overlap_mm;
/// A seam moves at most this far to be clear of holes by `clear_mm`.
constexpr double seam_shift_mm = 40;
constexpr double clear_mm = 11;
constexpr std::size_t most_rows = 12;

struct Piece {
  Length from;
  Length to;
};

Vector2 level(const StripLine& strip, const Piece& piece) {
  const Vector2 chord = strip.at(StripEdge::DrillLine, piece.to) -
                        strip.at(StripEdge::DrillLine, piece.from);
  return (strip.runs_left() ? -1.0 : 1.0) * chord.normalized();
}

/// What a piece takes in the frame in which it is level: the strip, the room along its
/// edges and beyond its ends, and the marks of its seams.
Eigen::AlignedBox2d bounds(const StripLine& strip, const Piece& piece) {
  const TilePose frame{level(strip, piece), {0, 0}};
  Eigen::AlignedBox2d box;
  const auto add = [&](const Point2& point) {
    box.extend(Point2(point.dot(frame.right), point.dot(frame.up())));
  };
  for (const Point2& point : strip.between(StripEdge::Sheer, piece.from, piece.to))
    add(point + edge_mm * frame.up());
  for (const Point2& point : strip.between(StripEdge::Low, piece.from, piece.to))
    add(point - edge_mm * frame.up());
  for (const bool start : {true, false}) {
    const Length girth = start ? piece.from : piece.to;
    const bool end = girth == (start ? strip.from() : strip.to());
    if (end) {
      const Vector2 away = (start ? -end_mm : end_mm) * strip.along(girth);
      for (const StripEdge edge : {StripEdge::Sheer, StripEdge::Low})
        add(strip.at(edge, girth) + away);
    } else {
      const Length middle = girth + Length::mm((start ? 0.5 : -0.5) * overlap_mm);
      const SeamLine seam = seam_line(strip, middle);
      for (const double along : {seam.above_mm, -seam.below_mm})
        for (const double aside : {-mark_radius_mm, mark_radius_mm})
          add(seam.on_line + along * seam.up + aside * frame.right);
    }
  }
  return box;
}

bool fits(const StripLine& strip, const Piece& piece, const TileRoom& room) {
  const Vector2 size = bounds(strip, piece).sizes();
  return size.x() <= room.width_mm && size.y() <= room.height_mm;
}

double nearest(const std::vector<Length>& holes, Length girth) {
  double least = std::numeric_limits<double>::infinity();
  for (const Length hole : holes)
    least = std::min(least, std::abs((hole - girth).in_mm()));
  return least;
}

/// The end of a piece not further than `to`, its seam clear of holes if it can be.
Length clear_end(const std::vector<Length>& holes, Length from, Length to) {
  const double most = std::min(seam_shift_mm, (to - from).in_mm() - 2.5 * overlap_mm);
  Length best = to;
  double best_clear = -1;
  for (double back = 0; back <= most && best_clear < clear_mm; back += 0.5) {
    const Length end = to - Length::mm(back);
    const double clear = nearest(holes, end - Length::mm(overlap_mm / 2));
    if (clear > best_clear) {
      best_clear = clear;
      best = end;
    }
  }
  return best;
}

/// How far a piece goes that starts at `from`; none if the shortest does not go in.
std::optional<Length> furthest(const StripLine& strip,
                               Length from,
                               const TileRoom& room,
                               double longest) {
  const auto fits_to = [&](Length to) { return fits(strip, {from, to}, room); };
  Length too_far = std::min(strip.to(), from + Length::mm(longest));
  if (fits_to(too_far)) return too_far;
  Length reached = std::min(strip.to(), from + Length::mm(shortest_mm));
  if (!fits_to(reached)) return std::nullopt;
  constexpr Length close = Length::mm(0.05);
  while (too_far - reached > close) {
    const Length middle = (reached + too_far) / 2;
    (fits_to(middle) ? reached : too_far) = middle;
  }
  return reached;
}

/// A strip in pieces no longer than `longest`; none if one does not go into the room.
/// @param insists  takes the shortest pieces where none goes in
std::optional<std::vector<Piece>> pieces(const StripLine& strip,
                                         const std::vector<Length>& holes,
                                         const TileRoom& room,
                                         double longest,
                                         bool insists) {
  std::vector<Piece> result;
  Length from = strip.from();
  for (;;) {
    auto end = furthest(strip, from, room, longest);
    if (!end && !insists) return std::nullopt;
    if (!end) end = std::min(strip.to(), from + Length::mm(shortest_mm));
    if (*end == strip.to()) {
      result.push_back({from, strip.to()});
      return result;
    }
    result.push_back({from, clear_end(holes, from, *end)});
    from = result.back().to - Length::mm(overlap_mm);
  }
}

/// The same with the pieces as short as so many of them can be.
std::vector<Piece> even_pieces(const StripLine& strip,
                               const std::vector<Length>& holes,
                               const TileRoom& room,
                               std::vector<Piece> found) {
  for (double longest = room.width_mm; longest > shortest_mm; longest *= 0.98) {
    auto shorter = pieces(strip, holes, room, longest, false);
    if (!shorter || shorter->size() > found.size()) break;
    found = std::move(*shorter);
  }
  return found;
}

TileRoom over_rows(const TileRoom& room, std::size_t rows) {
  const auto count = static_cast<double>(rows);
  return {room.width_mm, count * room.height_mm - (count - 1) * row_overlap_mm};
}

struct Division {
  std::size_t rows = 1;
  std::vector<Piece> pieces;
};

Division division(const StripLine& strip,
                  const std::vector<Length>& holes,
                  const TileRoom& room) {
  std::optional<Division> best;
  for (std::size_t rows = 1; rows <= most_rows; ++rows) {
    if (best && rows > best->rows + 1) break;
    const TileRoom all = over_rows(room, rows);
    const bool last = rows == most_rows && !best;
    const auto found = pieces(strip, holes, all, room.width_mm, last);
    if (!found) continue;
    if (!best || rows * found->size() < best->rows * best->pieces.size())
      best = Division{rows, even_pieces(strip, holes, all, *found)};
  }
  assert(best);
  return *best;
}

/// Whether a tile shows the whole of a hole; beyond the strip's edges there is room.
bool whole(const StripTile& tile,
           const StripLine& strip,
           Length hole,
           const StripTiles& tiles) {
  constexpr Length along = Length::mm(hole_along_mm);
  if (hole < tile.from || hole > tile.to) return false;
  if (tile.from > strip.from() && hole < tile.from + along) return false;
  if (tile.to < strip.to() && hole > tile.to - along) return false;
  const double down = tile.pose.in_window(strip.at(StripEdge::DrillLine, hole)).y();
  if (tile.row > 0 && down < hole_across_mm) return false;
  return tile.row + 1 == tiles.rows || down <= tiles.room.height_mm - hole_across_mm;
}

}  // namespace

std::string TileSeam::name(char mark) const {
  return fmt::format("{}|{} {}", under, over, mark);
}

StripTiles strip_tiles(const StripLine& strip,
                       const std::vector<Length>& holes,
                       const TileRoom& room,
                       std::size_t first_number) {
  assert(room.width_mm > 4 * overlap_mm && room.height_mm > 2 * row_overlap_mm);
  const Division divided = division(strip, holes, room);
  StripTiles result{room, divided.rows, divided.pieces.size(), {}};
  const double height = over_rows(room, result.rows).height_mm;
  for (std::size_t column = 0; column < result.columns; ++column) {
    const Piece& piece = divided.pieces[column];
    const Eigen::AlignedBox2d box = bounds(strip, piece);
    TilePose pose{level(strip, piece), {0, 0}};
    const double left = box.center().x() - room.width_mm / 2;
    const double top = box.center().y() + height / 2;
    for (std::size_t row = 0; row < result.rows; ++row) {
      const double down = static_cast<double>(row) * (room.height_mm - row_overlap_mm);
      pose.corner = left * pose.right + (top - down) * pose.up();
      StripTile tile{first_number + result.tiles.size(),
                     column,
                     row,
                     piece.from,
                     piece.to,
                     pose,
                     {},
                     {},
                     {}};
      tile.drawn = {box.min().x() - left, top - down - box.max().y(), box.sizes().x(),
                    box.sizes().y()};
      for (std::size_t i = 0; i < holes.size(); ++i)
        if (whole(tile, strip, holes[i], result)) tile.holes.push_back(i);
      result.tiles.push_back(std::move(tile));
    }
  }
  add_seams(strip, result);
  return result;
}

}  // namespace sheerlap

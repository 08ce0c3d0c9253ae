#include "joint/sheets/strip_tiles.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <map>
#include <set>

#include "tests/joint/sheets/arc_strip.h"

namespace sheerlap {
namespace {

constexpr TileRoom lying{249, 140};
constexpr TileRoom upright{162, 225};

struct Case {
  const char* what;
  ArcStrip arc;
  TileRoom room;
  double pitch_mm;
};

const Case cases[] = {
    {"straight", {0, 3000}, lying, 140},
    {"hollow", {4000, 6700}, lying, 95},
    {"port", {4000, 6700, 28, 22, SideName::Port}, lying, 95},
    {"a tight bow", {300, 400, 20, 20}, lying, 30},
    {"close holes", {2500, 1500}, lying, 12},
    {"as long as a tile", {0, 200}, lying, 60},
    {"short", {0, 40}, lying, 15},
    {"deep", {3000, 2000, 60, 90}, upright, 100},
    {"deeper than a tile", {5000, 2000, 100, 200}, lying, 100},
    {"its drill line where rows meet", {5000, 2000, 130, 130}, lying, 100},
    {"a roll", {6000, 7000}, {4900, 550}, 140},
};

struct Tiled {
  StripLine strip;
  std::vector<Length> holes;
  StripTiles tiles;
};

Tiled tiled(const Case& one) {
  Tiled made{arc_strip(one.arc), {}, {}};
  for (double at = one.pitch_mm / 2; at < one.arc.length_mm; at += one.pitch_mm)
    made.holes.push_back(arc_strip_start + Length::mm(at));
  made.tiles = strip_tiles(made.strip, made.holes, one.room);
  return made;
}

bool inside(const Point2& at, const TileRoom& room, double margin_mm) {
  return at.x() >= margin_mm && at.x() <= room.width_mm - margin_mm &&
         at.y() >= margin_mm && at.y() <= room.height_mm - margin_mm;
}

BOOST_AUTO_TEST_SUITE(strip_tiles_suite)

BOOST_AUTO_TEST_CASE(every_hole_is_whole_on_a_tile) {
  // property: its cross is 6 to 7 mm from middle to tip; with its mark it takes 15 up
  for (const Case& one : cases) BOOST_TEST_CONTEXT(one.what) {
      const Tiled made = tiled(one);
      std::set<std::size_t> found;
      for (const StripTile& tile : made.tiles.tiles)
        for (const std::size_t hole : tile.holes) {
          found.insert(hole);
          const Length girth = made.holes[hole];
          BOOST_TEST((girth >= tile.from && girth <= tile.to));
          const Point2 at =
              tile.pose.in_window(made.strip.at(StripEdge::DrillLine, girth));
          BOOST_TEST(inside(at, one.room, 7));
          BOOST_TEST(at.y() > 14);
          BOOST_TEST(at.y() < one.room.height_mm - 14);
        }
      BOOST_TEST(found.size() == made.holes.size());
    }
}

BOOST_AUTO_TEST_CASE(both_tiles_of_a_seam_show_its_two_marks) {
  for (const Case& one : cases) BOOST_TEST_CONTEXT(one.what) {
      const Tiled made = tiled(one);
      std::map<std::pair<std::size_t, std::size_t>, std::vector<TileSeam>> seams;
      for (const StripTile& tile : made.tiles.tiles)
        for (const TileSeam& seam : tile.seams) {
          BOOST_TEST((seam.under == tile.number || seam.over == tile.number));
          BOOST_TEST(seam.under < seam.over);
          for (const Point2& mark : {seam.a, seam.b})
            BOOST_TEST(inside(tile.pose.in_window(mark), one.room, 3));
          // far enough apart to fix the turn
          BOOST_TEST((seam.a - seam.b).norm() > 40);
          seams[{seam.under, seam.over}].push_back(seam);
        }
      for (const auto& [pair, both] : seams) {
        BOOST_TEST_REQUIRE(both.size() == 2u);
        BOOST_TEST((both[0].a - both[1].a).norm() == 0.0);
        BOOST_TEST((both[0].b - both[1].b).norm() == 0.0);
      }
      const std::size_t rows = made.tiles.rows, columns = made.tiles.columns;
      BOOST_TEST(seams.size() == rows * (columns - 1) + (rows - 1) * columns);
    }
}

BOOST_AUTO_TEST_CASE(pieces_cover_the_strip_and_overlap_by_24_mm) {
  for (const Case& one : cases) BOOST_TEST_CONTEXT(one.what) {
      const Tiled made = tiled(one);
      const auto& all = made.tiles.tiles;
      BOOST_TEST((all.front().from == made.strip.from()));
      BOOST_TEST((all.back().to == made.strip.to()));
      for (std::size_t i = made.tiles.rows; i < all.size(); ++i)
        BOOST_TEST((all[i - made.tiles.rows].to - all[i].from).in_mm() == 24,
                   boost::test_tools::tolerance(1e-9));
    }
}

BOOST_AUTO_TEST_CASE(nothing_of_the_strip_is_outside_the_windows) {
  for (const Case& one : cases) BOOST_TEST_CONTEXT(one.what) {
      const Tiled made = tiled(one);
      const auto& all = made.tiles.tiles;
      for (std::size_t first = 0; first < all.size(); first += made.tiles.rows)
        for (const StripEdge edge :
             {StripEdge::Sheer, StripEdge::DrillLine, StripEdge::Low})
          for (const Point2& point :
               made.strip.between(edge, all[first].from, all[first].to)) {
            bool shown = false;
            for (std::size_t row = 0; row < made.tiles.rows; ++row)
              shown |= inside(all[first + row].pose.in_window(point), one.room, 0);
            BOOST_TEST(shown);
          }
    }
}

BOOST_AUTO_TEST_CASE(a_piece_lies_level_and_not_mirrored) {
  for (const Case& one : cases) BOOST_TEST_CONTEXT(one.what) {
      const Tiled made = tiled(one);
      for (const StripTile& tile : made.tiles.tiles) {
        const auto at = [&](StripEdge edge, Length girth) {
          return tile.pose.in_window(made.strip.at(edge, girth));
        };
        const Point2 from = at(StripEdge::DrillLine, tile.from);
        const Point2 to = at(StripEdge::DrillLine, tile.to);
        BOOST_TEST(std::abs(from.y() - to.y()) < 1e-9);
        BOOST_TEST((to.x() < from.x()) == made.strip.runs_left());
        const Length middle = (tile.from + tile.to) / 2;
        BOOST_TEST(at(StripEdge::Sheer, middle).y() < at(StripEdge::Low, middle).y());
      }
    }
}

BOOST_AUTO_TEST_CASE(a_strip_takes_the_fewest_tiles) {
  // derived: a straight piece is as long as the window, 249; 14 are left beyond each
  // end of the strip, and neighbours overlap by 24: n tiles hold 249 n - 28 - 24 (n -
  // 1)
  const struct {
    double length;
    std::size_t tiles;
  } rows[] = {{220, 1}, {222, 2}, {445, 2}, {447, 3}, {895, 4}, {897, 5}};
  for (const auto& row : rows)
    BOOST_TEST(strip_tiles(arc_strip({0, row.length}), {}, lying).columns == row.tiles);
}

BOOST_AUTO_TEST_CASE(a_strip_too_deep_for_a_tile_takes_rows) {
  // derived: 16 of room beyond both edges; n rows hold 140 n - 40 (n - 1)
  const struct {
    double depth;
    std::size_t rows;
  } cases_by_depth[] = {{107, 1}, {109, 2}, {207, 2}, {209, 3}};
  for (const auto& row : cases_by_depth)
    BOOST_TEST(strip_tiles(arc_strip({0, 500, 28, row.depth - 28}), {}, lying).rows ==
               row.rows);
}

BOOST_AUTO_TEST_CASE(seams_keep_clear_of_holes) {
  // property: spaces of 95 leave room for a seam 11 from any hole
  const Tiled made = tiled(cases[1]);
  for (const StripTile& tile : made.tiles.tiles) {
    if (tile.to == made.strip.to()) continue;
    const Length seam = tile.to - Length::mm(12);
    for (const Length hole : made.holes)
      BOOST_TEST(std::abs((hole - seam).in_mm()) > 10.9);
  }
}

BOOST_AUTO_TEST_CASE(tiles_are_numbered_on_from_the_first) {
  const StripLine strip = arc_strip({0, 1000});
  const StripTiles tiles = strip_tiles(strip, {}, lying, 7);
  for (std::size_t i = 0; i < tiles.tiles.size(); ++i)
    BOOST_TEST(tiles.tiles[i].number == 7 + i);
  BOOST_TEST(tiles.tiles.front().seams.front().name('A') == "7|8 A");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

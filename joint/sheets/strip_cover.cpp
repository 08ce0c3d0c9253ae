#include "joint/sheets/strip_cover.h"

#include <functional>

#include "joint/sheets/drill_front.h"
#include "joint/sheets/strip_drawing.h"

namespace sheerlap {
namespace {

constexpr double sign_mm = 14;
constexpr double key_row_mm = 15;

void draw_hatched(Page& page, Point2 centre, StripBand::Kind kind) {
  const Box box{centre.x() - sign_mm / 2, centre.y() - 5, sign_mm, 10};
  page.hatch(box.corners(), band_hatch(kind), {.width_mm = 0.13});
}

struct Sign {
  const char* words;
  std::function<void(Page&, Point2)> draw;
};

std::vector<Sign> signs(const StripHole& hole) {
  StripHole barred = hole;
  barred.drillable = false;
  StripHole good = hole;
  good.drillable = true;
  return {
      {"hole: prick through the clear middle",
       [good](Page& page, Point2 at) { draw_strip_hole(page, at, good); }},
      {"DO NOT DRILL",
       [barred](Page& page, Point2 at) { draw_strip_hole(page, at, barred); }},
      {"mark to join tiles by", draw_register_mark},
      {"keep out: no hole, to the end of its clearance",
       [](Page& page, Point2 at) { draw_hatched(page, at, StripBand::Kind::KeepOut); }},
      {"space over its limit, bridged",
       [](Page& page, Point2 at) { draw_hatched(page, at, StripBand::Kind::Bridge); }},
      {"cut this tile here; dotted: the next one lies over",
       [](Page& page, Point2 at) {
         page.line(at - Vector2(0, 6), at + Vector2(0, 6), {.dash = Dash::Dashed});
       }},
  };
}

void draw_key(SheetFlow& flow, const StripHole& hole) {
  flow.need(key_row_mm);
  const std::vector<Sign> all = signs(hole);
  const Box room = flow.room();
  const double width = room.width / static_cast<double>(all.size());
  double left = room.left;
  for (const Sign& sign : all) {
    sign.draw(flow.page(), {left + sign_mm / 2 + 1, room.top + key_row_mm / 2});
    flow.page().paragraph({left + sign_mm + 3, room.top + key_row_mm / 2 - 4},
                          sign.words, width - sign_mm - 5,
                          {.height_mm = letter_height::least});
    left += width;
  }
  flow.take(key_row_mm);
}

}  // namespace

void draw_strip_cover(SheetFlow& flow,
                      SideName side,
                      const std::vector<StripSheets>& sheets,
                      const NumberStyle& style) {
  flow.paragraph(drill_side_words(side) + ": story strip, full size",
                 {.height_mm = letter_height::title, .bold = true});
  flow.paragraph(strip_hand_words(side) +
                     "; laid on the lip's outer face, each hole is "
                     "pricked through it",
                 {.bold = true});
  flow.table(strip_lengths(sheets, style, "tile"));
  draw_key(flow, sheets.front().stretch.holes.front());
  const Box room = flow.room();
  const Box left{room.left, room.top + 3, (room.width - 6) / 2, room.height - 3};
  const Box right{left.right() + 6, left.top, left.width, left.height};
  write_notes(flow, {left, right}, strip_notes(side, sheets, style, "tile"));
}

}  // namespace sheerlap

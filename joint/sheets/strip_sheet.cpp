#include "joint/sheets/strip_sheet.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/sheets/check_bar.h"
#include "joint/sheets/drill_front.h"
#include "joint/sheets/sheet_flow.h"
#include "joint/sheets/strip_cover.h"
#include "joint/sheets/strip_drawing.h"
#include "joint/sheets/strip_notes.h"
#include "joint/sheets/strip_words.h"

namespace sheerlap {
namespace {

/// How a tile's sheet is divided.
struct TileSheet {
  Box head;
  Box window;
  Point2 bar_up;      ///< lower end
  Point2 bar_across;  ///< left end
};

TileSheet tile_sheet(PageSize size) {
  constexpr double head_mm = 11, bars_mm = 14, left_of_bar_mm = 1;
  const Box body = sheet_area(size).body;
  const Box window{body.left + bars_mm, body.top + head_mm, body.width - bars_mm,
                   body.height - head_mm - bars_mm};
  return {{body.left, body.top, body.width, head_mm},
          window,
          {body.left + left_of_bar_mm, window.bottom()},
          {window.left, body.bottom() - 1}};
}

std::vector<StripSheets> divided(const std::vector<StripStretch>& content,
                                 PageSize size) {
  const Box window = tile_sheet(size).window;
  std::vector<StripSheets> sheets;
  std::size_t number = 1;
  for (const StripStretch& stretch : content) {
    sheets.push_back({stretch, strip_tiles(stretch.line, stretch.girths(),
                                           {window.width, window.height}, number)});
    number += sheets.back().tiles.tiles.size();
  }
  return sheets;
}

std::size_t count_of(const std::vector<StripSheets>& sheets) {
  return sheets.back().tiles.tiles.back().number;
}

/// "tile 2 to the right, tile 4 to the left"
std::string neighbour_words(const StripTile& tile, bool runs_left) {
  std::string words;
  for (const TileSeam& seam : tile.seams) {
    const bool further = seam.under == tile.number;
    const std::size_t other = further ? seam.over : seam.under;
    const double across = std::abs(tile.pose.turned(seam.b - seam.a).x());
    const double down = std::abs(tile.pose.turned(seam.b - seam.a).y());
    const std::string where = across > down          ? (further ? "below" : "above")
                              : further == runs_left ? "to the left"
                                                     : "to the right";
    words += fmt::format("; tile {} {}", other, where);
  }
  return words;
}

void draw_head(const StripView& view, const Box& head, std::size_t count) {
  Page& page = view.page;
  const std::string side = drill_side_words(view.stretch.side);
  const Lettering large{
      .height_mm = letter_height::title, .bold = true, .upright = Upright::Top};
  page.text({head.left, head.top}, side, large);
  const double beside = head.left + page.width_of(side, large) + 4;
  page.fitted({beside, head.top},
              fmt::format("tile {} of {}{}", view.tile.number, count,
                          neighbour_words(view.tile, view.stretch.line.runs_left())),
              head.right() - beside, {.bold = true, .upright = Upright::Top});
  page.fitted({beside, head.top + 4.5},
              fmt::format("stretch {} of {}, girth {} to {}; {}", view.stretch.number,
                          view.stretch.of, girth_words(view.tile.from, view.style),
                          girth_words(view.tile.to, view.style),
                          strip_hand_words(view.stretch.side)),
              head.right() - beside,
              {.height_mm = letter_height::least, .upright = Upright::Top});
}

void draw_tile(const StripView& view,
               const TileSheet& sheet,
               std::size_t count,
               LengthUnit unit) {
  draw_head(view, sheet.head, count);
  draw_check_bar_up(view.page, sheet.bar_up, unit);
  draw_check_bar_across(view.page, sheet.bar_across, unit);
  const double left = sheet.bar_across.x() + check_bar_mm(unit) + 6;
  view.page.paragraph(
      {left, sheet.window.bottom() + 4},
      "The strip lies on the lip's outer face. Measure both bars, join the tiles on "
      "their marks, check by tape, prove on three points before the first hole: see "
      "sheet 1.",
      sheet.head.right() - left, {.height_mm = letter_height::least});
  draw_strip(view);
}

}  // namespace

Result<std::string> strip_sheet(const Job& job,
                                SideName side,
                                const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const std::vector<StripStretch> content = strip_content(job, side);
  PageSize size = small_page(style.paper).turned();
  std::vector<StripSheets> sheets = divided(content, size);
  std::vector<StripSheets> upright = divided(content, size.turned());
  if (count_of(upright) < count_of(sheets)) {
    size = size.turned();
    sheets = std::move(upright);
  }
  SheetTitle title;
  title.title = job.joint.title;
  title.what = "Story strip, " + drill_side_words(side);
  title.lengths = fmt::format("{}; girths to {}, on the drill line, lip's outer face",
                              numbers.unit_name(), numbers.step_name());
  title.scale = "1:1";
  title.date = style.report.date;
  return pdf_bytes(
      {fmt::format("{}: story strip, {}", job.joint.title, side_word(side)),
       style.report.date},
      [&](PdfFile& file) {
        SheetFlow flow(file, size, title);
        draw_strip_cover(flow, side, sheets, numbers);
        const TileSheet sheet = tile_sheet(size);
        for (const StripSheets& one : sheets)
          for (const StripTile& tile : one.tiles.tiles) {
            Page& page = file.add_page(size);
            draw_sheet_frame(page, title, {file.page_number(), file.page_count()});
            draw_tile({page, sheet.window, one.stretch, tile, numbers, job.joint.title},
                      sheet, count_of(sheets), style.report.unit);
          }
      });
}

}  // namespace sheerlap

#include "joint/sheets/strip_roll.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/sheets/check_bar.h"
#include "joint/sheets/drill_front.h"
#include "joint/sheets/pdf_file.h"
#include "joint/sheets/sheet_frame.h"
#include "joint/sheets/strip_drawing.h"
#include "joint/sheets/strip_notes.h"

namespace sheerlap {
namespace {

/// A roll this wide is common; common practice, no source.
constexpr double widest_mm = 610;
constexpr double head_mm = 11;
constexpr double bars_mm = 15;  ///< beside the strip at both ends
constexpr double apart_mm = 10;
/// The words stand in columns this wide at the foot.
constexpr double column_mm = 140;
constexpr double between_mm = 5;
constexpr double foot_words_mm = 18;

/// A piece of the strip on a page.
struct Placed {
  const StripStretch* stretch;
  StripTile tile;  ///< its window as large as what is drawn
  double from_start_mm = 0;
};

struct RollPage {
  std::vector<Placed> pieces;
  double width_mm = 0;  ///< of the pieces, with what lies between them
  double height_mm = 0;
};

/// What a frame takes off a page.
PageSize frame_of(PageSize page) {
  const SheetArea area = sheet_area(page);
  return {page.width_mm - area.body.width, page.height_mm - area.body.height};
}

/// A tile with a window as large as what is drawn.
StripTile trimmed(StripTile tile) {
  tile.pose.corner +=
      tile.drawn.left * tile.pose.right - tile.drawn.top * tile.pose.up();
  tile.drawn.left = tile.drawn.top = 0;
  return tile;
}

std::vector<StripSheets> divided(const Job& job, SideName side) {
  const PageSize most{longest_roll_mm, widest_mm};
  const PageSize taken = frame_of(most);
  const TileRoom room{most.width_mm - taken.width_mm - 2 * bars_mm,
                      most.height_mm - taken.height_mm - head_mm};
  std::vector<StripSheets> sheets;
  std::size_t number = 1;
  for (const StripStretch& stretch : strip_content(job, side)) {
    sheets.push_back(
        {stretch, strip_tiles(stretch.line, stretch.girths(), room, number)});
    number += sheets.back().tiles.tiles.size();
  }
  return sheets;
}

/// The pieces one after another, as many on a page as its length lets.
std::vector<RollPage> pages_of(const std::vector<StripSheets>& sheets) {
  std::vector<RollPage> pages;
  for (const StripSheets& one : sheets)
    for (const StripTile& tile : one.tiles.tiles) {
      Placed placed{&one.stretch, trimmed(tile)};
      const Box& drawn = placed.tile.drawn;
      if (pages.empty() ||
          pages.back().width_mm + apart_mm + drawn.width > one.tiles.room.width_mm)
        pages.emplace_back();
      RollPage& page = pages.back();
      if (!page.pieces.empty()) page.width_mm += apart_mm;
      placed.from_start_mm = page.width_mm;
      page.width_mm += drawn.width;
      page.height_mm = std::max(page.height_mm, drawn.height);
      page.pieces.push_back(std::move(placed));
    }
  return pages;
}

/// Notes from column to column along the foot; returns the right end of the last one.
double write_foot(Page& page, const Box& foot, const std::vector<Note>& notes) {
  const Lettering lettering{.height_mm = letter_height::least};
  double left = foot.left, top = foot.top;
  for (const Note& note : notes) {
    const std::string words =
        note.heading.empty() ? note.words : note.heading + ": " + note.words;
    const double height = page.paragraph_height(words, column_mm, lettering);
    if (top > foot.top && top + height > foot.bottom()) {
      left += column_mm + between_mm;
      top = foot.top;
    }
    page.paragraph({left, top}, words, column_mm, lettering);
    top += height + 0.5;
  }
  return left + column_mm;
}

/// What is common to the pages of a roll.
struct Roll {
  SideName side;
  LengthUnit unit;
  const NumberStyle& style;
  SheetTitle title;
  std::vector<Note> notes;
  double notes_mm = 0;  ///< what they take along the foot
};

/// Room for a bar across at both ends of the foot.
double foot_bars_mm(LengthUnit unit) {
  return 2 * (check_bar_mm(unit) + 2 * between_mm);
}

PageSize size_of(const RollPage& pieces, const Roll& roll, bool first) {
  // the block stands in the page's foot, and takes nothing off it where it is longer
  const PageSize taken = frame_of({longest_roll_mm, widest_mm});
  const double block = longest_roll_mm - taken.width_mm -
                       sheet_area({longest_roll_mm, widest_mm}).beside.width;
  const double foot = foot_bars_mm(roll.unit) + block + between_mm +
                      (first ? roll.notes_mm + between_mm : 0);
  const double body = std::max(pieces.height_mm + head_mm, check_bar_mm(roll.unit) + 4);
  return {std::max(pieces.width_mm + 2 * bars_mm, foot) + taken.width_mm,
          body + taken.height_mm};
}

void draw_roll_head(Page& page,
                    const Box& body,
                    const RollPage& pieces,
                    const Roll& roll) {
  const std::string side = drill_side_words(roll.side);
  const Lettering large{
      .height_mm = letter_height::title, .bold = true, .upright = Upright::Top};
  const double width = body.width / 2 - bars_mm;
  std::string names;
  for (const Placed& placed : pieces.pieces)
    names +=
        fmt::format("{}piece {}, stretch {} of {}", names.empty() ? "" : "; ",
                    placed.tile.number, placed.stretch->number, placed.stretch->of);
  for (const double left : {body.left + bars_mm, body.centre().x()}) {
    page.text({left, body.top}, side, large);
    const double beside = left + page.width_of(side, large) + 4;
    const double room = std::max(left + width - beside, 0.0);
    page.fitted({beside, body.top}, names, room,
                {.bold = true, .upright = Upright::Top});
    page.fitted({beside, body.top + 4.5}, strip_hand_words(roll.side), room,
                {.height_mm = letter_height::least, .upright = Upright::Top});
  }
}

void draw_roll_bars(Page& page, const SheetArea& area, LengthUnit unit) {
  const double length = check_bar_mm(unit);
  const double low = area.body.top + length + 2;
  draw_check_bar_up(page, {area.body.left + 1, low}, unit);
  draw_check_bar_up(page, {area.body.right() - bars_mm + 1, low}, unit);
  const double foot = area.beside.bottom() - 3;
  draw_check_bar_across(page, {area.beside.left + between_mm, foot}, unit);
  draw_check_bar_across(page, {area.beside.right() - between_mm - length, foot}, unit);
}

void draw_pieces(Page& page,
                 const Box& body,
                 const RollPage& pieces,
                 const Roll& roll) {
  for (const Placed& placed : pieces.pieces) {
    const Box& drawn = placed.tile.drawn;
    const double left =
        placed.stretch->line.runs_left()
            ? body.right() - bars_mm - placed.from_start_mm - drawn.width
            : body.left + bars_mm + placed.from_start_mm;
    const Box window{left, body.bottom() - pieces.height_mm, drawn.width, drawn.height};
    draw_strip(
        {page, window, *placed.stretch, placed.tile, roll.style, roll.title.title});
  }
}

void draw_roll_page(PdfFile& file, const RollPage& pieces, const Roll& roll) {
  const bool first = file.page_number() == 0;
  Page& page = file.add_page(size_of(pieces, roll, first));
  const SheetArea area =
      draw_sheet_frame(page, roll.title, {file.page_number(), file.page_count()});
  draw_roll_head(page, area.body, pieces, roll);
  draw_roll_bars(page, area, roll.unit);
  draw_pieces(page, area.body, pieces, roll);
  if (!first) return;
  Box foot = area.beside.inset(1);
  foot.left += foot_bars_mm(roll.unit) / 2;
  write_foot(page, foot, roll.notes);
}

/// The notes, and how much of the foot they take.
void add_notes(Roll& roll, const std::vector<StripSheets>& sheets) {
  roll.notes = strip_notes(roll.side, sheets, roll.style, "page");
  std::string lengths;
  for (const std::string& words : strip_length_words(sheets, roll.style))
    lengths += (lengths.empty() ? "" : " ") + words;
  roll.notes.insert(roll.notes.begin() + 3, {"By tape", lengths});
}

}  // namespace

Result<std::string> strip_roll(const Job& job, SideName side, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const std::vector<StripSheets> sheets = divided(job, side);
  const std::vector<RollPage> pages = pages_of(sheets);
  Roll roll{side, style.report.unit, numbers, {}, {}};
  roll.title.title = job.joint.title;
  roll.title.what = "Story strip, " + drill_side_words(side);
  roll.title.lengths =
      fmt::format("{}; girths to {}, on the drill line, lip's outer face",
                  numbers.unit_name(), numbers.step_name());
  roll.title.scale = "1:1";
  roll.title.date = style.report.date;
  add_notes(roll, sheets);
  const PdfInfo info{
      fmt::format("{}: story strip on a roll, {}", job.joint.title, side_word(side)),
      style.report.date};
  const auto measured = pdf_bytes(info, [&](PdfFile& file) {
    const PageSize size{longest_roll_mm, widest_mm};
    roll.notes_mm = write_foot(file.add_page(size),
                               {0, 0, size.width_mm, foot_words_mm}, roll.notes);
  });
  if (!measured) return measured;
  return pdf_bytes(info, [&](PdfFile& file) {
    for (const RollPage& page : pages) draw_roll_page(file, page, roll);
  });
}

}  // namespace sheerlap

#include "joint/sheets/sheet_flow.h"

#include <algorithm>
#include <utility>

namespace sheerlap {
namespace {

/// Between one thing and the next.
constexpr double gap_mm = 2.5;
/// A heading stands with at least this much below it.
constexpr double kept_with_heading_mm = 25;

}  // namespace

SheetFlow::SheetFlow(PdfFile& file, PageSize size, SheetTitle title)
    : file_(file), size_(size), title_(std::move(title)) {
  new_sheet();
}

void SheetFlow::take(double height_mm) {
  const double taken = std::min(height_mm, room_.height);
  room_.top += taken;
  room_.height -= taken;
  fresh_ = false;
}

void SheetFlow::need(double height_mm) {
  if (!fresh_ && room_.height < height_mm) new_sheet();
}

void SheetFlow::new_sheet() {
  Page& page = file_.add_page(size_);
  room_ = draw_sheet_frame(page, title_, {file_.page_number(), file_.page_count()})
              .body.inset(1);
  fresh_ = true;
}

void SheetFlow::space(double height_mm) {
  if (!fresh_) take(height_mm);
}

void SheetFlow::heading(const std::string& words) {
  space(gap_mm);
  need(kept_with_heading_mm);
  paragraph(words, {.height_mm = letter_height::heading, .bold = true});
}

void SheetFlow::paragraph(const std::string& words, const Lettering& lettering) {
  const double height = page().paragraph_height(words, room_.width, lettering);
  need(height);
  page().paragraph({room_.left, room_.top}, words, room_.width, lettering);
  take(height + lettering.height_mm / 2);
}

void SheetFlow::table(const PageTable& table) {
  const PlacedTable placed(page(), table, room_.width);
  std::size_t first = 0;
  while (first < table.rows.size()) {
    need(placed.heading_mm() + placed.row_mm(first) +
         (first + 1 < table.rows.size() ? placed.row_mm(first + 1) : 0));
    const std::size_t last = first + placed.rows_in(room_.height, first);
    take(placed.draw(page(), {room_.left, room_.top}, first, last));
    first = last;
  }
  space(gap_mm);
}

}  // namespace sheerlap

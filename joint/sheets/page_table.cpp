#include "joint/sheets/page_table.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace sheerlap {
namespace {

/// Between a cell's words and its lines.
constexpr double side_mm = 1;
constexpr double above_mm = 1;
/// The most that a table's lettering shrinks to.
constexpr double least_squeeze = 0.3;
/// The narrowest a wrapped column gets, in heights of its letters.
constexpr double least_wrapped_heights = 8;

bool spans_table(RowLook look) {
  return look == RowLook::Banner || look == RowLook::Warning;
}

Across across_of(Align align) {
  return align == Align::Left ? Across::Left : Across::Right;
}

Lettering lettering(const PageTable& table, std::size_t column) {
  const PageColumn& asked = table.columns[column];
  return {.height_mm = asked.letter_mm > 0 ? asked.letter_mm : table.letter_mm,
          .bold = asked.bold,
          .across = across_of(asked.align),
          .upright = Upright::Middle};
}

Lettering heading_lettering(const PageTable& table, const PageColumn& column) {
  return {.height_mm = table.letter_mm,
          .bold = true,
          .across = across_of(column.align),
          .upright = Upright::Top};
}

Lettering banner_lettering(const PageTable& table, RowLook look) {
  return {.height_mm = table.letter_mm,
          .bold = true,
          .upright = Upright::Middle,
          .ink = look == RowLook::Warning ? shade::white : shade::black};
}

/// Where words start in a cell: at its left or its right side.
double words_x(const Box& box, Align align) {
  return align == Align::Left ? box.left + side_mm : box.right() - side_mm;
}

double natural_mm(Page& page, const PageTable& table, std::size_t column) {
  const PageColumn& asked = table.columns[column];
  double widest = 0;
  for (const std::string& line : asked.heading)
    widest = std::max(widest, page.width_of(line, heading_lettering(table, asked)));
  for (const PageRow& row : table.rows)
    if (!spans_table(row.look))
      widest =
          std::max(widest, page.width_of(row.cells[column], lettering(table, column)));
  return std::max(widest + 2 * side_mm, asked.least_width_mm);
}

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

double row_height(Page& page,
                  const PageTable& table,
                  const PageRow& row,
                  const std::vector<double>& widths) {
  const auto framed = [](double words_mm, double letter_mm) {
    return words_mm - (line_pitch - 1) * letter_mm + 2 * above_mm;
  };
  double height = std::max(framed(line_pitch * table.letter_mm, table.letter_mm),
                           table.least_row_mm);
  if (spans_table(row.look)) {
    const double words = page.paragraph_height(row.cells[0], sum(widths) - 2 * side_mm,
                                               banner_lettering(table, row.look));
    return std::max(height, framed(words, table.letter_mm));
  }
  for (std::size_t k = 0; k < widths.size(); ++k) {
    const Lettering letters = lettering(table, k);
    const double words =
        table.columns[k].wraps
            ? page.paragraph_height(row.cells[k], widths[k] - 2 * side_mm, letters)
            : line_pitch * letters.height_mm;
    height = std::max(height, framed(words, letters.height_mm));
  }
  return height;
}

void cross_out(Page& page, const Box& box) {
  page.line({box.left, box.bottom()}, {box.right(), box.top},
            {.width_mm = line_width::thick});
  page.line({box.left, box.top}, {box.right(), box.bottom()},
            {.width_mm = line_width::thick});
}

}  // namespace

PageTable page_table(const TextTable& table) {
  PageTable made;
  for (const Column& column : table.columns)
    made.columns.push_back({column.heading, column.align});
  if (!made.columns.empty() && made.columns.back().align == Align::Left) {
    made.columns.back().wraps = true;
    made.columns.back().stretch = 1;
  }
  for (const auto& row : table.rows) made.rows.push_back({row});
  return made;
}

PlacedTable::PlacedTable(Page& page, const PageTable& table, double width_mm)
    : table_(table) {
  share_out(page, width_mm);
  std::size_t lines = 0;
  for (const PageColumn& column : table.columns)
    lines = std::max(lines, column.heading.size());
  if (lines > 0)
    heading_mm_ = table.letter_mm + 2 * above_mm +
                  static_cast<double>(lines - 1) * line_pitch * table.letter_mm;
  for (const PageRow& row : table.rows) {
    assert(spans_table(row.look) || row.cells.size() == table.columns.size());
    rows_mm_.push_back(row_height(page, table, row, widths_mm_));
  }
}

void PlacedTable::share_out(Page& page, double width_mm) {
  double stretch = 0;
  for (std::size_t k = 0; k < table_.columns.size(); ++k) {
    widths_mm_.push_back(natural_mm(page, table_, k));
    stretch += table_.columns[k].stretch;
  }
  const double over = width_mm - sum(widths_mm_);
  if (over >= 0 && stretch > 0)
    for (std::size_t k = 0; k < widths_mm_.size(); ++k)
      widths_mm_[k] += over * table_.columns[k].stretch / stretch;
  if (over < 0) {
    // the columns that wrap give way; then all alike, their words written smaller
    double giving = 0;
    const double least = least_wrapped_heights * table_.letter_mm;
    for (std::size_t k = 0; k < widths_mm_.size(); ++k)
      if (table_.columns[k].wraps) giving += std::max(widths_mm_[k] - least, 0.0);
    const double share = giving > 0 ? std::min(-over / giving, 1.0) : 0;
    for (std::size_t k = 0; k < widths_mm_.size(); ++k)
      if (table_.columns[k].wraps)
        widths_mm_[k] -= share * std::max(widths_mm_[k] - least, 0.0);
    squeeze(width_mm);
  }
  width_mm_ = sum(widths_mm_);
}

void PlacedTable::squeeze(double width_mm) {
  constexpr double rounding_mm = 1e-6;
  if (sum(widths_mm_) <= width_mm + rounding_mm) return;
  const double blank = 2 * side_mm * static_cast<double>(widths_mm_.size());
  squeeze_ = std::max((width_mm - blank) / (sum(widths_mm_) - blank), least_squeeze);
  for (double& width : widths_mm_)
    width = 2 * side_mm + squeeze_ * (width - 2 * side_mm);
}

std::size_t PlacedTable::rows_in(double height_mm, std::size_t first) const {
  double left = height_mm - heading_mm_;
  std::size_t last = first;
  while (last < rows_mm_.size() && (last == first || rows_mm_[last] <= left))
    left -= rows_mm_[last++];
  if (last == rows_mm_.size()) return last - first;
  while (last > first + 1 && spans_table(table_.rows[last - 1].look)) --last;
  return last - first;
}

Lettering PlacedTable::squeezed(Lettering lettering) const {
  lettering.height_mm *= squeeze_;
  return lettering;
}

double PlacedTable::draw(Page& page,
                         const Point2& top_left,
                         std::size_t first,
                         std::size_t last) const {
  double taken = draw_heading(page, top_left);
  for (std::size_t row = first; row < last; ++row) {
    draw_row(page, top_left + Vector2(0, taken), row);
    taken += rows_mm_[row];
  }
  page.box({top_left.x(), top_left.y(), width_mm_, taken},
           {.width_mm = line_width::thick});
  return taken;
}

double PlacedTable::draw_heading(Page& page, const Point2& top_left) const {
  if (heading_mm_ == 0) return 0;
  Box box{top_left.x(), top_left.y(), 0, heading_mm_};
  for (std::size_t k = 0; k < table_.columns.size(); ++k) {
    box.width = widths_mm_[k];
    page.box(box);
    double y = box.top + above_mm;
    for (const std::string& line : table_.columns[k].heading) {
      page.fitted({words_x(box, table_.columns[k].align), y}, line,
                  box.width - 2 * side_mm,
                  squeezed(heading_lettering(table_, table_.columns[k])));
      y += line_pitch * table_.letter_mm;
    }
    box.left += box.width;
  }
  const double foot = top_left.y() + heading_mm_;
  page.line({top_left.x(), foot}, {top_left.x() + width_mm_, foot},
            {.width_mm = line_width::thick});
  return heading_mm_;
}

void PlacedTable::draw_row(Page& page, const Point2& top_left, std::size_t row) const {
  const PageRow& what = table_.rows[row];
  Box box{top_left.x(), top_left.y(), width_mm_, rows_mm_[row]};
  if (spans_table(what.look)) {
    page.fill(box.corners(),
              what.look == RowLook::Warning ? shade::black : shade::light);
    page.box(box);
    const Lettering words = banner_lettering(table_, what.look);
    const double room = box.width - 2 * side_mm;
    const double height = page.paragraph_height(what.cells[0], room, words) -
                          (line_pitch - 1) * words.height_mm;
    page.paragraph({box.left + side_mm, box.centre().y() - height / 2}, what.cells[0],
                   room, words);
    return;
  }
  for (std::size_t k = 0; k < table_.columns.size(); ++k) {
    box.width = widths_mm_[k];
    draw_cell(page, box, row, k);
    box.left += box.width;
  }
}

void PlacedTable::draw_cell(Page& page,
                            const Box& box,
                            std::size_t row,
                            std::size_t column) const {
  const PageRow& what = table_.rows[row];
  const PageColumn& asked = table_.columns[column];
  Lettering words = squeezed(lettering(table_, column));
  if (what.look == RowLook::Barred && column == 0) {
    page.fill(box.corners());
    words.ink = shade::white;
    words.bold = true;
  }
  page.box(box);
  const std::string& cell = what.cells[column];
  if (cell.empty() && what.look == RowLook::Barred) cross_out(page, box);
  const double room = box.width - 2 * side_mm;
  if (asked.wraps && page.width_of(cell, words) > room) {
    const double height =
        page.paragraph_height(cell, room, words) - (line_pitch - 1) * words.height_mm;
    page.paragraph({words_x(box, asked.align), box.centre().y() - height / 2}, cell,
                   room, words);
    return;
  }
  page.fitted({words_x(box, asked.align), box.centre().y()}, cell, room, words);
}

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "joint/documents/text_table.h"
#include "joint/sheets/box.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// A column of a table on a sheet.
struct PageColumn {
  std::vector<std::string> heading;  ///< on lines
  Align align = Align::Right;
  double least_width_mm = 0;
  /// Its share of the width that is left over when every column has what it needs.
  double stretch = 0;
  /// Whether its cells may run over several lines where the table is too wide.
  bool wraps = false;
  bool bold = false;
  double letter_mm = 0;  ///< of its cells; the table's if 0
};

/// How a row is to be taken.
enum class RowLook {
  Plain,
  Banner,   ///< one text, the first cell, over the whole width, on grey, bold
  Warning,  ///< the same, white on black
  Barred,   ///< plain, but its first cell is white on black and its blank cells are
            ///< crossed out: nothing is to be done or written here
};

struct PageRow {
  std::vector<std::string> cells;  ///< one a column; one alone in a banner
  RowLook look = RowLook::Plain;
};

/// A table on a sheet.
struct PageTable {
  std::vector<PageColumn> columns;
  std::vector<PageRow> rows;
  double letter_mm = letter_height::least;
  double least_row_mm = 0;  ///< room to write in
};

/// A table of a document, for a sheet; its last column wraps if it is aligned left.
PageTable page_table(const TextTable& table);

/// A table with its widths worked out for a width of paper.
///
/// Where it is too wide the columns that wrap give way, and where that is not enough
/// all of it is lettered smaller: a figure is never cut short.
class PlacedTable {
 public:
  /// @param table  outlives this
  PlacedTable(Page& page, const PageTable& table, double width_mm);

  /// The height of the heading; 0 where no column has one.
  double heading_mm() const { return heading_mm_; }
  double row_mm(std::size_t row) const { return rows_mm_[row]; }
  const std::vector<double>& widths_mm() const { return widths_mm_; }
  /// How many rows from `first` on, and not less than one, go into a height with the
  /// heading above them. A banner does not stand last: it stays with the row that
  /// follows it.
  std::size_t rows_in(double height_mm, std::size_t first) const;
  /// Draws the heading and the rows from `first` to before `last`.
  /// @returns  the height taken
  double draw(Page& page,
              const Point2& top_left,
              std::size_t first,
              std::size_t last) const;

 private:
  void share_out(Page& page, double width_mm);
  void squeeze(double width_mm);
  Lettering squeezed(Lettering lettering) const;
  double draw_heading(Page& page, const Point2& top_left) const;
  void draw_row(Page& page, const Point2& top_left, std::size_t row) const;
  void draw_cell(Page& page, const Box& box, std::size_t row, std::size_t column) const;

  const PageTable& table_;
  std::vector<double> widths_mm_;
  double width_mm_ = 0;
  double squeeze_ = 1;  ///< of all lettering but the banners'
  double heading_mm_ = 0;
  std::vector<double> rows_mm_;
};

}  // namespace sheerlap

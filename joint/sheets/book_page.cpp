#include <fmt/format.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

#include "joint/documents/text_table.h"
#include "joint/sheets/book.h"
#include "joint/sheets/cell_text.h"

namespace sheerlap {
namespace {

constexpr double line_height = 13.5;  // points, of lettering of 10
constexpr double title_height = 20;   // points, of lettering of 14
/// Letters that a line holds for each of a column's width, which counts digits; other
/// fonts than ours may be wider, and headings are bold.
constexpr double letters = 1.1;
constexpr double bold_letters = 0.95;

lxw_row_t row_of(Spot spot) { return static_cast<lxw_row_t>(spot.row); }
lxw_col_t column_of(Spot spot) { return static_cast<lxw_col_t>(spot.column); }

/// What the library refuses of us is our own bug: what users write is made safe first.
void done([[maybe_unused]] lxw_error error) { assert(error == LXW_NO_ERROR); }

std::size_t lines_of(const std::string& text, double characters, CellKind kind) {
  const bool thin = kind == CellKind::Wrapped || kind == CellKind::Figure;
  const auto width = static_cast<std::size_t>(
      std::max(1.0, characters * (thin ? letters : bold_letters)));
  const std::string lines = wrapped(text, width);
  return std::max<std::size_t>(
      1, static_cast<std::size_t>(std::count(lines.begin(), lines.end(), '\n')));
}

}  // namespace

std::string address(Spot spot, bool fixed) {
  std::string column;
  for (std::size_t left = spot.column + 1; left > 0; left = (left - 1) / 26)
    column.insert(column.begin(), static_cast<char>('A' + (left - 1) % 26));
  return fixed ? fmt::format("${}${}", column, spot.row + 1)
               : fmt::format("{}{}", column, spot.row + 1);
}

std::string BookPage::reference(Spot spot) const {
  return fmt::format("'{}'!{}", name_, address(spot, true));
}

void BookPage::text(Spot spot, const std::string& text, Look look) {
  done(worksheet_write_string(sheet_, row_of(spot), column_of(spot),
                              cell_text(text, 2000).c_str(), book_.format(look)));
  const bool wraps = look.kind != CellKind::Text && look.kind != CellKind::Strong;
  if (wraps && spot.column < widths_.size())
    heighten(spot.row, lines_of(text, widths_[spot.column] - 1, look.kind));
}

void BookPage::heighten(std::size_t row, std::size_t lines) {
  std::size_t& known = lines_[row];
  if (lines <= std::max<std::size_t>(known, 1)) return;
  known = lines;
  done(worksheet_set_row(sheet_, row_of({row, 0}),
                         static_cast<double>(lines) * line_height + 2, nullptr));
}

void BookPage::number(Spot spot, double value, Look look) {
  assert(std::isfinite(value));
  done(worksheet_write_number(sheet_, row_of(spot), column_of(spot), value,
                              book_.format(look)));
}

void BookPage::formula(Spot spot,
                       const std::string& formula,
                       std::optional<double> value,
                       Look look) {
  if (!value) return word_formula(spot, formula, "", look);
  assert(std::isfinite(*value));
  done(worksheet_write_formula_num(sheet_, row_of(spot), column_of(spot),
                                   formula.c_str(), book_.format(look), *value));
}

void BookPage::word_formula(Spot spot,
                            const std::string& formula,
                            const std::string& value,
                            Look look) {
  done(worksheet_write_formula_str(sheet_, row_of(spot), column_of(spot),
                                   formula.c_str(), book_.format(look), value.c_str()));
}

void BookPage::input(Spot spot, std::optional<double> value, CellNumber number_look) {
  const Look look{CellKind::Input, number_look};
  if (value) return number(spot, *value, look);
  done(
      worksheet_write_blank(sheet_, row_of(spot), column_of(spot), book_.format(look)));
}

void BookPage::limit(Spot spot, const CellLimits& limits) {
  assert(limits.words.size() <= 255);
  std::string words = limits.words;
  lxw_data_validation rule{};
  rule.validate =
      limits.whole ? LXW_VALIDATION_TYPE_INTEGER : LXW_VALIDATION_TYPE_DECIMAL;
  rule.criteria = LXW_VALIDATION_CRITERIA_BETWEEN;
  rule.ignore_blank = LXW_VALIDATION_ON;
  rule.show_input = LXW_VALIDATION_ON;
  rule.show_error = LXW_VALIDATION_ON;
  rule.minimum_number = limits.least;
  rule.maximum_number = limits.most;
  rule.error_message = words.data();
  done(worksheet_data_validation_cell(sheet_, row_of(spot), column_of(spot), &rule));
}

void BookPage::paragraph(std::size_t row,
                         std::size_t last_column,
                         const std::string& text,
                         Look look) {
  assert(widths_.size() > last_column);
  const std::string safe = cell_text(text, 2000);
  const bool is_title = look.kind == CellKind::Title;
  const double across =
      std::accumulate(widths_.begin(), widths_.begin() + last_column + 1, 0.0);
  const auto lines =
      static_cast<double>(lines_of(safe, across / (is_title ? 1.5 : 1), look.kind));
  const lxw_row_t at = row_of({row, 0});
  done(worksheet_merge_range(sheet_, at, 0, at, column_of({0, last_column}),
                             safe.c_str(), book_.format(look)));
  done(worksheet_set_row(sheet_, at,
                         lines * (is_title ? title_height : line_height) + 2, nullptr));
}

void BookPage::widths(const std::vector<double>& characters) {
  widths_ = characters;
  for (std::size_t column = 0; column < characters.size(); ++column) {
    const lxw_col_t at = column_of({0, column});
    done(worksheet_set_column(sheet_, at, at, characters[column], nullptr));
  }
}

void BookPage::headings(std::size_t row,
                        const std::vector<std::string>& words,
                        const std::vector<std::size_t>& text_columns) {
  for (std::size_t column = 0; column < words.size(); ++column) {
    const bool over_text = std::find(text_columns.begin(), text_columns.end(),
                                     column) != text_columns.end();
    text({row, column}, words[column],
         {over_text ? CellKind::TextHeading : CellKind::Heading});
  }
}

void BookPage::freeze(Spot spot) {
  worksheet_freeze_panes(sheet_, row_of(spot), column_of(spot));
}

void BookPage::print(Spot last,
                     std::optional<std::pair<std::size_t, std::size_t>> repeat) {
  done(worksheet_print_area(sheet_, 0, 0, row_of(last), column_of(last)));
  if (repeat)
    done(worksheet_repeat_rows(sheet_, row_of({repeat->first, 0}),
                               row_of({repeat->second, 0})));
}

}  // namespace sheerlap

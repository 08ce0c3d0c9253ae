#include "joint/sheets/book.h"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <cassert>
#include <charconv>
#include <chrono>

#include "joint/sheets/cell_text.h"

namespace sheerlap {
namespace {

constexpr const char* lettering = "Arial";
constexpr lxw_color_t input_fill = 0xE6E6E6;
constexpr std::uint8_t a4 = 9;
constexpr std::uint8_t letter = 1;

const char* number_format(CellNumber number) {
  switch (number) {
    case CellNumber::None:
      return "General";
    case CellNumber::Whole:
      return "#,##0";
    case CellNumber::Tenths:
      return "#,##0.0";
    case CellNumber::Length:
      return "0.0###";
    case CellNumber::Price:
      return "#,##0.00##";
    case CellNumber::Money:
      return "#,##0.00";
    case CellNumber::Share:
      return "0.0#%";
  }
  return "General";
}

void set_kind(lxw_format* format, CellKind kind) {
  format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
  switch (kind) {
    case CellKind::Text:
      break;
    case CellKind::Wrapped:
      format_set_text_wrap(format);
      break;
    case CellKind::Title:
      format_set_bold(format);
      format_set_font_size(format, 14);
      format_set_text_wrap(format);
      break;
    case CellKind::Strong:
      format_set_bold(format);
      format_set_text_wrap(format);
      break;
    case CellKind::Heading:
    case CellKind::TextHeading:
      format_set_bold(format);
      format_set_text_wrap(format);
      format_set_align(format, LXW_ALIGN_VERTICAL_BOTTOM);
      if (kind == CellKind::Heading) format_set_align(format, LXW_ALIGN_RIGHT);
      format_set_bottom(format, LXW_BORDER_MEDIUM);
      format_set_left(format, LXW_BORDER_HAIR);
      break;
    case CellKind::Figure:
      format_set_bottom(format, LXW_BORDER_HAIR);
      format_set_text_wrap(format);
      break;
    case CellKind::Total:
      format_set_bold(format);
      format_set_text_wrap(format);
      format_set_top(format, LXW_BORDER_THIN);
      format_set_bottom(format, LXW_BORDER_DOUBLE);
      break;
    case CellKind::Input:
      format_set_border(format, LXW_BORDER_MEDIUM);
      format_set_unlocked(format);
      format_set_bg_color(format, input_fill);
      format_set_text_wrap(format);
      break;
  }
}

/// When the workbook says it was made: noon of the report's date, or of a day long ago,
/// so that the same job gives the same bytes.
std::time_t creation_time(const std::optional<std::string>& date) {
  using namespace std::chrono;
  int year = 2000;
  unsigned month = 1, day = 1;
  if (date && date->size() == 10) {
    const char* text = date->data();
    std::from_chars(text, text + 4, year);
    std::from_chars(text + 5, text + 7, month);
    std::from_chars(text + 8, text + 10, day);
  }
  const sys_days days =
      std::chrono::year(year) / std::chrono::month(month) / std::chrono::day(day);
  return system_clock::to_time_t(days + hours(12));
}

}  // namespace

Book::Book(const std::string& path, const std::string& title, const SheetStyle& style)
    : book_(workbook_new(path.c_str())), title_(title), style_(style) {
  assert(book_ != nullptr);
  std::string safe = cell_text(title, 200);
  lxw_doc_properties properties{};
  properties.title = safe.data();
  properties.created = creation_time(style.report.date);
  workbook_set_properties(book_, &properties);
}

Book::~Book() {
  if (book_ != nullptr) lxw_workbook_free(book_);
}

BookPage Book::page(const std::string& name) {
  lxw_worksheet* sheet = workbook_add_worksheet(book_, name.c_str());
  assert(sheet != nullptr);
  worksheet_set_landscape(sheet);
  worksheet_set_paper(sheet, style_.paper == Paper::A4 ? a4 : letter);
  worksheet_set_margins(sheet, 0.5, 0.5, 0.6, 0.7);
  worksheet_fit_to_pages(sheet, 1, 0);
  // without a password: against slips of the hand; inputs and widths stay free
  lxw_protection protection{};
  protection.format_columns = protection.format_rows = LXW_TRUE;
  worksheet_protect(sheet, nullptr, &protection);
  worksheet_gridlines(sheet, LXW_HIDE_ALL_GRIDLINES);
  const std::string footer =
      fmt::format("&L{}&C{}&Rpage &P of &N", margin_text(title_), name);
  [[maybe_unused]] const lxw_error error = worksheet_set_footer(sheet, footer.c_str());
  assert(error == LXW_NO_ERROR);
  return {*this, sheet, name};
}

void Book::define(const std::string& name, const std::string& reference) {
  [[maybe_unused]] const lxw_error error =
      workbook_define_name(book_, name.c_str(), ("=" + reference).c_str());
  assert(error == LXW_NO_ERROR);
}

Result<void> Book::close() {
  lxw_workbook* book = book_;
  book_ = nullptr;
  if (workbook_close(book) != LXW_NO_ERROR)
    return unreadable("",
                      "the workbook cannot be put together: there may be no room "
                      "in the folder for temporary files");
  return {};
}

lxw_format* Book::format(Look look) {
  lxw_format*& format = formats_[look];
  if (format != nullptr) return format;
  format = workbook_add_format(book_);
  format_set_font_name(format, lettering);
  format_set_font_size(format, 10);
  format_set_num_format(format, number_format(look.number));
  set_kind(format, look.kind);
  const bool words = look.number == CellNumber::None;
  if (words && (look.kind == CellKind::Figure || look.kind == CellKind::Total ||
                look.kind == CellKind::TextHeading))
    format_set_indent(format, 1);
  return format;
}

}  // namespace sheerlap

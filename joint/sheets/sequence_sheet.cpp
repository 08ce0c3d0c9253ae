#include "joint/sheets/sequence_sheet.h"

#include <algorithm>

#include "joint/documents/cautions.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

bool is_banner(const PageTable& table, std::size_t row) {
  return table.rows[row].look == RowLook::Banner;
}

/// A table's rows from one on, with the columns as wide as they are in the whole, and
/// with the banner that the first of them stands under.
PageTable rest_of(const PageTable& table,
                  const PlacedTable& placed,
                  std::size_t first) {
  PageTable rest = table;
  for (std::size_t i = 0; i < rest.columns.size(); ++i) {
    rest.columns[i].least_width_mm = placed.widths_mm()[i];
    rest.columns[i].stretch = 0;
  }
  std::size_t banner = first;
  while (banner > 0 && !is_banner(table, banner)) --banner;
  rest.rows.erase(rest.rows.begin(),
                  rest.rows.begin() + static_cast<std::ptrdiff_t>(first));
  if (banner < first && is_banner(table, banner))
    rest.rows.insert(
        rest.rows.begin(),
        {{table.rows[banner].cells.front() + ", continued"}, RowLook::Banner});
  return rest;
}

}  // namespace

void record_row(SheetFlow& flow,
                const std::vector<RecordField>& fields,
                double height_mm) {
  flow.need(height_mm);
  double all = 0;
  for (const RecordField& field : fields) all += field.share;
  Box box{flow.room().left, flow.room().top, 0, height_mm};
  for (const RecordField& field : fields) {
    box.width = flow.room().width * field.share / all;
    draw_field(flow.page(), box, field.name, field.value);
    box.left = box.right();
  }
  flow.take(height_mm);
}

void table_in_columns(SheetFlow& flow, const PageTable& table, std::size_t columns) {
  constexpr double apart_mm = 3;
  const auto count = static_cast<double>(columns);
  const double width = (flow.room().width - apart_mm * (count - 1)) / count;
  const PlacedTable placed(flow.page(), table, width);
  const std::size_t all = table.rows.size();
  std::size_t first = 0;
  while (first < all) {
    flow.need(placed.heading_mm() + 4 * placed.row_mm(first));
    const std::size_t even = (all - first + columns - 1) / columns + 1;
    const Box room = flow.room();
    double tallest = 0;
    for (std::size_t column = 0; column < columns && first < all; ++column) {
      const PageTable part = rest_of(table, placed, first);
      const PlacedTable there(flow.page(), part, width);
      std::size_t last =
          std::min({part.rows.size(), even, there.rows_in(room.height, 0)});
      if (last < part.rows.size() && last > 1 && is_banner(part, last - 1)) --last;
      const Point2 corner(room.left + static_cast<double>(column) * (width + apart_mm),
                          room.top);
      tallest = std::max(tallest, there.draw(flow.page(), corner, 0, last));
      first = all - (part.rows.size() - last);
    }
    flow.take(tallest);
    flow.space(apart_mm);
  }
}

void small_print(SheetFlow& flow, const std::string& words) {
  flow.paragraph(words, {.height_mm = letter_height::least});
}

void record_cautions(SheetFlow& flow) {
  flow.space(2);
  for (const std::string& words : cautions()) small_print(flow, "- " + words);
}

Result<std::string> sequence_sheet(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const PageSize size = small_page(style.paper);
  const auto title = [&](const std::string& what, const std::string& lengths) {
    SheetTitle made;
    made.title = job.joint.title;
    made.what = what;
    made.lengths = lengths;
    made.date = style.report.date;
    return made;
  };
  return pdf_bytes(
      {job.joint.title + ": sequence", style.report.date}, [&](PdfFile& file) {
        const std::string unit = numbers.unit_name();
        if (job.adhesive) {
          SheetFlow bonding(file, size,
                            title("adhesive record, one boat",
                                  unit + "; girths to " + numbers.step_name()));
          write_bonding(bonding, job, numbers);
        }
        SheetFlow driving(file, size, title("order of driving", unit));
        write_driving(driving, job, numbers);
        SheetFlow leaks(file, size, title("leak-test map, from above", "-"));
        write_leak_map(leaks, job);
        SheetFlow signing(file, size, title("sign-off, one boat", "-"));
        write_sign_off(signing, job, numbers);
      });
}

}  // namespace sheerlap

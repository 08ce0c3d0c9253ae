#include "joint/sheets/drawing.h"

#include <fmt/format.h>

#include "joint/documents/check_text.h"
#include "joint/sheets/drawing_arrangement.h"
#include "joint/sheets/drawing_expanded.h"
#include "joint/sheets/drawing_sections.h"
#include "joint/sheets/pdf_file.h"
#include "joint/sheets/sheet_frame.h"

namespace sheerlap {
namespace {

/// What the checks come to, in the upper right corner of a sheet: it may be passed on
/// alone. The sheet of the tables has it among its notes.
void draw_verdict(DrawnSheet& sheet) {
  const Box body = sheet_area(sheet.page.size()).body;
  const Point2 at(body.right() - 1, body.top + letter_height::heading);
  // smaller where the title of a view is long
  for (const double height : {letter_height::text, letter_height::least})
    if (sheet.labels.write(
            sheet.page, at, verdict_line(sheet.job.checks),
            {.height_mm = height, .bold = true, .across = Across::Right}))
      return;
}

}  // namespace

Result<std::string> drawing(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const PageSize size = drawing_page(style.paper);
  // the angle that the standards of each paper take
  const Projection projection =
      style.paper == Paper::A4 ? Projection::FirstAngle : Projection::ThirdAngle;
  return pdf_bytes(
      {fmt::format("{}: drawing of the joint", job.joint.title), style.report.date},
      [&](PdfFile& file) {
        SheetTitle title;
        title.title = job.joint.title;
        title.lengths = numbers.unit_name();
        title.date = style.report.date;
        const auto add_sheet = [&](const std::string& what, const std::string& scale) {
          title.what = what;
          title.scale = scale;
          Page& page = file.add_page(size);
          draw_sheet_frame(page, title, {file.page_number(), file.page_count()});
          return DrawnSheet{page, job, numbers, LabelSpace(sheet_area(size).body)};
        };
        title.projection = projection;
        DrawnSheet first = add_sheet("Joint: general arrangement",
                                     arrangement_scale(job, style.report.unit, size)
                                         .words(LengthUnit::Millimetres));
        keep_foot_free(first);
        draw_arrangement(first, projection);
        draw_verdict(first);
        write_left_out(first);
        title.projection = Projection::None;
        DrawnSheet second =
            add_sheet("Joint: sides laid flat",
                      expanded_scales(job, style.report.unit, size).words());
        keep_foot_free(second);
        draw_expanded(second);
        draw_verdict(second);
        write_left_out(second);
        DrawnSheet third = add_sheet(
            "Joint: sections and tables",
            section_scale(job, style.report.unit, size).words(LengthUnit::Millimetres));
        draw_sections(third);
      });
}

}  // namespace sheerlap

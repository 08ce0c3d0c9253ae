#include "joint/sheets/drill_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "joint/documents/check_text.h"
#include "joint/documents/schedule_words.h"
#include "joint/documents/wording.h"
#include "joint/sheets/drill_front.h"
#include "joint/sheets/drill_table.h"
#include "joint/sheets/sheet_flow.h"
#include "joint/sheets/sign_off.h"

namespace sheerlap {
namespace {

constexpr double actual_mm = 28;
constexpr double difference_mm = 24;
constexpr double initials_mm = 20;
constexpr double check_row_mm = 6.5;
/// The table of holes starts on a sheet of its own but where this much is left.
constexpr double most_of_sheet = 0.7;

/// The holes of a side that are to be drilled, or those that are not.
std::size_t count_of(const Schedule& schedule, SideName side, bool to_drill) {
  return static_cast<std::size_t>(
      std::count_if(schedule.stations.begin(), schedule.stations.end(),
                    [&](const DrillStation& station) {
                      return station.side == side && drillable(station) == to_drill;
                    }));
}

PageColumn to_fill_in(const std::string& heading, double width_mm) {
  PageColumn column;
  column.heading = {heading};
  column.align = Align::Left;
  column.least_width_mm = width_mm;
  return column;
}

PageTable check_table(const Job& job, SideName side, const NumberStyle& style) {
  PageTable table;
  PageColumn words;
  words.heading = {"from, to and what of"};
  words.align = Align::Left;
  words.wraps = true;
  words.stretch = 1;
  PageColumn figure;
  figure.heading = {style.unit_name()};
  figure.bold = true;
  figure.letter_mm = letter_height::text;
  PageColumn measured;
  measured.heading = {"measured"};
  measured.align = Align::Left;
  table.columns = {words,
                   measured,
                   figure,
                   to_fill_in("ACTUAL", actual_mm),
                   to_fill_in("difference", difference_mm),
                   to_fill_in("INITIALS", initials_mm)};
  table.least_row_mm = check_row_mm;
  for (const CheckLine& line : job.schedule->check_lines)
    if (line.side == side)
      table.rows.push_back({{check_words(line, style), style.sentence(line.measured),
                             check_figure(line, style), "", "", ""}});
  return table;
}

void draw_holes(SheetFlow& flow,
                const Job& job,
                SideName side,
                const NumberStyle& style) {
  const PageTable table = drill_table(job, side, style);
  if (table.rows.empty()) {
    flow.paragraph("There are no holes on this side.");
    return;
  }
  flow.need(most_of_sheet * sheet_area(flow.page().size()).body.height);
  flow.heading(fmt::format("{}: the holes, jig by jig", drill_side_words(side)));
  flow.table(table);
}

void draw_checks(SheetFlow& flow,
                 const Job& job,
                 SideName side,
                 const NumberStyle& style) {
  const PageTable table = check_table(job, side, style);
  if (table.rows.empty()) return;
  flow.heading(fmt::format("{}: dimensions to check by, before the first hole",
                           drill_side_words(side)));
  flow.paragraph(straight_words() + " Girths are rounded to " + style.step_name() + ".",
                 {.height_mm = letter_height::least});
  flow.table(table);
}

void draw_end(SheetFlow& flow, const Job& job, SideName side) {
  constexpr double all_mm = 50;
  flow.need(all_mm);
  flow.heading(fmt::format("{}: count and sign", drill_side_words(side)));
  draw_hole_count(flow, count_of(*job.schedule, side, true),
                  count_of(*job.schedule, side, false));
  draw_signatures(flow, {"hull number", "drilled by, date", "checked by, date",
                         "not as the schedule: report numbers"});
}

}  // namespace

bool has_drill_sheet(const Job& job, SideName side) {
  return job.layout && job.schedule && job.perimeter.side(side) != nullptr;
}

Result<std::string> drill_sheet(const Job& job,
                                SideName side,
                                const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  SheetTitle title;
  title.title = job.joint.title;
  title.what = "Drilling schedule, " + drill_side_words(side);
  title.lengths = fmt::format("{}; girths to {}, on the lip's outer face",
                              numbers.unit_name(), numbers.step_name());
  title.date = style.report.date;
  return pdf_bytes(
      {fmt::format("{}: drilling schedule, {}", job.joint.title, side_word(side)),
       style.report.date},
      [&](PdfFile& file) {
        SheetFlow flow(file, small_page(style.paper).turned(), title);
        draw_drill_front(flow, job, side, numbers);
        draw_holes(flow, job, side, numbers);
        draw_checks(flow, job, side, numbers);
        draw_end(flow, job, side);
      });
}

}  // namespace sheerlap

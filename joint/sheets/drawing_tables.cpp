#include "joint/sheets/drawing_tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "joint/documents/cautions.h"
#include "joint/documents/check_text.h"
#include "joint/documents/fit_text.h"
#include "joint/documents/perimeter_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/page_table.h"
#include "joint/sheets/short_text.h"

namespace sheerlap {
namespace {

constexpr double between_mm = 6;
constexpr Lettering small{.height_mm = letter_height::least};

/// Writes things one below the other in a column.
class TextColumn {
 public:
  TextColumn(Page& page, const Box& box) : page_(page), box_(box) {}

  void heading(const std::string& words) {
    take(page_.paragraph({box_.left, box_.top}, words, box_.width, {.bold = true}));
  }
  void paragraph(const std::string& words, bool bold = false) {
    Lettering lettering = small;
    lettering.bold = bold;
    const double height = page_.paragraph_height(words, box_.width, lettering);
    if (height > box_.height) return;
    take(page_.paragraph({box_.left, box_.top}, words, box_.width, lettering) + 1);
  }
  /// As many rows as there is room for; says how many more there are.
  void table(const PageTable& table) {
    const PlacedTable placed(page_, table, box_.width);
    const double more_mm = 2 * line_pitch * small.height_mm;
    if (table.rows.empty() || placed.heading_mm() + placed.row_mm(0) > box_.height)
      return;
    std::size_t rows = placed.rows_in(box_.height, 0);
    if (rows < table.rows.size()) rows = placed.rows_in(box_.height - more_mm, 0);
    take(placed.draw(page_, {box_.left, box_.top}, 0, rows) + 2);
    if (rows < table.rows.size())
      paragraph(fmt::format("and {} more: see fit.txt", table.rows.size() - rows));
  }

 private:
  void take(double height) {
    box_.top += height;
    box_.height -= height;
  }

  Page& page_;
  Box box_;
};

std::size_t count_of(const Fit& fit, FitVerdict verdict) {
  return static_cast<std::size_t>(
      std::count_if(fit.runs.begin(), fit.runs.end(),
                    [&](const FitRun& run) { return run.verdict == verdict; }));
}

/// "FIT: 2 stretches tight, 1 stretch wide" or that there is none.
std::string fit_verdict(const Job& job, const NumberStyle& style) {
  if (!job.fit) return "FIT: not worked out, the joint file has no [adhesive]";
  const std::string window =
      fmt::format("{} to {} {}", style.size(job.joint.adhesive->gap_min),
                  style.size(job.joint.adhesive->gap_max), style.unit_name());
  std::string out;
  for (const FitVerdict verdict :
       {FitVerdict::Interference, FitVerdict::Tight, FitVerdict::Wide}) {
    const std::size_t count = count_of(*job.fit, verdict);
    if (count > 0)
      out += fmt::format("{}{} {}", out.empty() ? "" : ", ",
                         count == 1 ? "1 stretch" : fmt::format("{} stretches", count),
                         word_of(verdict));
  }
  if (out.empty())
    return "FIT: the gap is inside its window, " + window + ", all round";
  return fmt::format("FIT: gap outside its window, {}, on {}", window, out);
}

PageTable stretches_outside(const Fit& fit, const NumberStyle& style) {
  Fit outside;
  std::copy_if(fit.runs.begin(), fit.runs.end(), std::back_inserter(outside.runs),
               [](const FitRun& run) { return run.verdict != FitVerdict::Good; });
  return page_table(fit_runs(outside, style));
}

/// A table with its cells cut to what goes on a few lines.
PageTable short_cells(PageTable table) {
  constexpr std::size_t longest = 150;
  for (PageRow& row : table.rows)
    for (std::string& cell : row.cells) cell = short_text(cell, longest);
  return table;
}

void draw_notes(TextColumn& column, const DrawnSheet& sheet) {
  column.heading("Notes");
  column.paragraph(verdict_line(sheet.job.checks), true);
  column.paragraph(
      "Do not scale the drawing or mark out by it: mark out by the drilling schedule. "
      "X "
      "aft, Y to starboard, Z up.");
  column.paragraph(
      "Edge distances are to the edges as drawn, trim tolerances not taken off. Depths "
      "are straight down from the sheer. Hull below the lap and lip over the sheer are "
      "carried on straight and broken off.");
  for (const std::string& caution : cautions()) column.paragraph(caution);
}

}  // namespace

void draw_tables(DrawnSheet& sheet, const Box& box) {
  const double width = (box.width - 2 * between_mm) / 3;
  const auto column = [&](int number) {
    return TextColumn(sheet.page, {box.left + number * (width + between_mm), box.top,
                                   width, box.height});
  };
  TextColumn first = column(0), second = column(1), third = column(2);
  first.heading("Perimeter");
  first.table(short_cells(page_table(perimeter_table(sheet.job, sheet.style))));
  first.paragraph(perimeter_words(sheet.job, sheet.style));
  second.heading("Fit");
  second.paragraph(fit_verdict(sheet.job, sheet.style), true);
  if (sheet.job.fit) {
    second.table(page_table(fit_extremes(*sheet.job.fit, sheet.style)));
    second.table(stretches_outside(*sheet.job.fit, sheet.style));
  }
  draw_notes(third, sheet);
}

}  // namespace sheerlap

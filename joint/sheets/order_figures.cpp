#include "joint/sheets/order_figures.h"

#include <fmt/format.h>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

Length open_length(const Perimeter& perimeter) {
  Length length;
  for (const PerimeterSide& side : perimeter.sides) {
    length += side.sheer_length;
    for (const OpeningSpan& opening : side.openings)
      length += opening.sheer_from - opening.sheer_to;
  }
  return length;
}

}  // namespace

BookUnit book_unit(LengthUnit unit) {
  if (unit == LengthUnit::Millimetres)
    return {"mm", "sq mm", "m", "a metre", 1, 1000, "/1000"};
  // 1 cu in = 25.4^3 mm3
  return {"in", "sq in", "ft", "a foot", 25.4, 25.4 * 12, "*16.387064"};
}

OrderFigures order_figures(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const AdhesivePlan& plan = *job.adhesive;
  const std::string shift = numbers.size_with_unit(lip_shift);
  return {
      job,
      numbers,
      book_unit(style.report.unit),
      section_bands(job.joint, job.perimeter),
      fastener_pieces(job.joint.fastener, *job.schedule),
      {{{"least: lip " + shift + " closer", "least", plan.least, &SectionBand::least},
        {"nominal: as drawn", "nominal", plan.nominal, &SectionBand::nominal},
        {"most: lip " + shift + " further off", "most", plan.most,
         &SectionBand::most}}},
      open_length(job.perimeter),
      style.report.date};
}

OrderPart OrderFigures::part(const AdhesiveAmounts& amounts, std::size_t boats) const {
  return adhesive_order(adhesive(), amounts, boats, guns_of(job.joint));
}

OrderPages::OrderPages(Book& book)
    : inputs(book.page("Inputs")),
      order(book.page("Order")),
      purchasing(book.page("Purchasing")),
      adhesive(book.page("Adhesive")),
      fasteners(book.page("Fasteners")),
      beads(book.page("Beads")),
      sections(book.page("Sections")),
      notes(book.page("Notes")) {}

std::size_t write_head(BookPage& page,
                       const OrderFigures& figures,
                       std::size_t last_column,
                       const std::string& what,
                       const std::string& words) {
  std::size_t row = 0;
  page.paragraph(row++, last_column, figures.job.joint.title + ": " + what,
                 {CellKind::Title});
  page.paragraph(row++, last_column,
                 verdict_line(figures.job.checks) +
                     fmt::format(" As worked out by the program for {}: it does not "
                                 "follow the page Inputs.",
                                 counted(figures.rules().boats, "boat")) +
                     (figures.date ? " Dated " + *figures.date + "." : ""),
                 {CellKind::Strong});
  page.paragraph(row++, last_column, words);
  page.word_formula({row++, 0},
                    "=IF(stopped,\"STOP: these inputs cannot be worked with; see the "
                    "foot of the page Inputs.\",\"\")",
                    "", {});
  return row;
}

}  // namespace sheerlap

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/wording.h"
#include "joint/sheets/bond_course.h"
#include "joint/sheets/strength_chart.h"
#include "joint/sheets/strength_words.h"
#include "joint/sheets/use_plot.h"

namespace sheerlap {
namespace {

/// The bars of one side's holes.
void draw_bars(const UsePlot& plot,
               const std::vector<const FastenerRow*>& rows,
               const FastenerRow& worst) {
  const double pitch = plot.box.width / static_cast<double>(rows.size());
  const double wide = std::min(0.7 * pitch, 4.0);
  const double letters_mm = 1.5 * letter_height::least;
  const auto every = static_cast<std::size_t>(std::ceil(letters_mm / pitch));
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const FastenerRow& row = *rows[i];
    const double middle = plot.box.left + pitch * (static_cast<double>(i) + 0.5);
    const double top = plot.y(row.utilisation);
    const Box bar{middle - wide / 2, top, wide, plot.box.bottom() - top};
    plot.page.fill(bar.corners(), row.utilisation <= 1 ? shade::light : shade::black);
    plot.page.box(bar, {.width_mm = 0.18});
    if (i % every == 0 || &row == &worst) {
      Lettering mark = least_lettering(Across::Right);
      mark.turn_degrees = 90;
      mark.bold = &row == &worst;
      plot.page.text({middle, plot.box.bottom() + 1}, row.mark, mark);
    }
    if (&row != &worst) continue;
    Lettering words =
        least_lettering(i > rows.size() / 2 ? Across::Right : Across::Left);
    words.bold = true;
    words.clears_ground = true;
    plot.page.text({middle + (i > rows.size() / 2 ? -wide : wide),
                    std::max(top - 1.6, plot.box.top + 1.6)},
                   fmt::format("worst, {}: {}", row.mark, use_words(row.utilisation)),
                   words);
  }
}

}  // namespace

void draw_fastener_use(SheetFlow& flow, const Job& job) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  if (fasteners.rows.empty()) return;
  std::vector<double> uses;
  for (const FastenerRow& row : fasteners.rows) uses.push_back(row.utilisation);
  const UseAxis axis = use_axis(uses);
  constexpr double heading_and_chart_mm = 70;
  flow.need(heading_and_chart_mm);
  flow.heading("Use of the fasteners by hole, the bond gone");
  flow.paragraph(
      fmt::format("A bar for each hole in the order of the schedule; black: over 1. "
                  "Heavy dashes: 1, all there is. Uses over {} are drawn at the top.",
                  at_most_decimals(axis.top, 1)),
      least_lettering());
  for (const PerimeterSide& side : job.perimeter.sides) {
    std::vector<const FastenerRow*> rows;
    for (const FastenerRow& row : fasteners.rows)
      if (row.side == side.name) rows.push_back(&row);
    if (rows.empty()) continue;
    constexpr double mark_room_mm = 8;
    const UsePlot plot =
        start_use_plot(flow, capitalised(side_word(side.name)), axis, mark_room_mm);
    draw_use_axis(plot);
    draw_bars(plot, rows, fasteners.rows[fasteners.worst]);
    draw_use_limit(plot);
    end_use_plot(flow, plot.box.bottom() + mark_room_mm);
  }
}

}  // namespace sheerlap

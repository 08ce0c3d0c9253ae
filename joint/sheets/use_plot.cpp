#include "joint/sheets/use_plot.h"

#include <cmath>

#include "joint/documents/number_style.h"

namespace sheerlap {
namespace {

constexpr double plot_mm = 30;    // height
constexpr double before_mm = 12;  // for the marks of the axis
constexpr double name_mm = 6;
constexpr double after_mm = 4;  // to what follows
constexpr double grid_mm = 0.1;

}  // namespace

Box use_plot_box(const Box& room) {
  return {room.left + before_mm, room.top + name_mm, room.width - before_mm - 3,
          plot_mm};
}

UsePlot start_use_plot(SheetFlow& flow,
                       const std::string& name,
                       UseAxis axis,
                       double below_mm) {
  flow.need(name_mm + plot_mm + below_mm + after_mm);
  const Box room = flow.room();
  flow.page().text({room.left, room.top + 1}, name,
                   {.bold = true, .upright = Upright::Top});
  return {flow.page(), use_plot_box(room), axis};
}

void end_use_plot(SheetFlow& flow, double bottom) {
  flow.take(bottom - flow.room().top + after_mm);
}

void draw_use_axis(const UsePlot& plot) {
  for (double use = 0; use < plot.axis.top + 1e-9; use += plot.axis.step) {
    if (use > 0 && std::abs(use - 1) > 1e-9)
      plot.page.line({plot.box.left, plot.y(use)}, {plot.box.right(), plot.y(use)},
                     {.width_mm = grid_mm});
    plot.page.text({plot.box.left - 1.2, plot.y(use)}, at_most_decimals(use, 1),
                   least_lettering(Across::Right));
  }
  plot.page.box(plot.box);
}

void draw_use_limit(const UsePlot& plot) {
  plot.page.line({plot.box.left, plot.y(1)}, {plot.box.right(), plot.y(1)},
                 {.width_mm = line_width::heavy, .dash = Dash::Dashed});
  plot.page.text({plot.box.left - 6, plot.y(1)}, "limit",
                 least_lettering(Across::Right));
}

Lettering least_lettering(Across across, Upright upright) {
  return {.height_mm = letter_height::least, .across = across, .upright = upright};
}

}  // namespace sheerlap

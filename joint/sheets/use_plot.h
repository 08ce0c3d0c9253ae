#pragma once

#include <algorithm>

#include "joint/sheets/bond_course.h"
#include "joint/sheets/page.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// A plot on a sheet whose height is a use.
struct UsePlot {
  Page& page;
  Box box;
  UseAxis axis;

  double y(double use) const {
    return box.bottom() - box.height * std::min(use, axis.top) / axis.top;
  }
};

/// Where the next plot stands in a room, if there is room for it.
Box use_plot_box(const Box& room);

/// Makes room on a sheet for a plot with a name above and so much below it, and writes
/// the name; the room is not taken.
UsePlot start_use_plot(SheetFlow& flow,
                       const std::string& name,
                       UseAxis axis,
                       double below_mm);

/// Takes the room of a plot and what was drawn below it, down to `bottom`.
void end_use_plot(SheetFlow& flow, double bottom);

/// The plot's frame and its marks.
void draw_use_axis(const UsePlot& plot);

/// The limit, 1, over what is drawn.
void draw_use_limit(const UsePlot& plot);

/// The least lettering.
Lettering least_lettering(Across across = Across::Left,
                          Upright upright = Upright::Middle);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/fit.h"
#include "joint/job.h"
#include "joint/layout_stretches.h"
#include "joint/sheets/drawing_scale.h"
#include "joint/sheets/label_space.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// A sheet of the drawing while views are put on it; what it holds is referred to.
struct DrawnSheet {
  Page& page;
  const Job& job;
  const NumberStyle& style;
  LabelSpace labels;                       ///< of the sheet inside its frame
  std::vector<std::string> left_out = {};  ///< words for which there was no room

  /// A factor at which polylines keep within this of their line, on paper.
  static constexpr double within_mm = 0.02;
};

/// What a sheet has for views: its body without a strip on the left for a check bar.
Box view_room(PageSize size);

/// The check bars, across and up from the lower left corner, and the box beside the
/// title block that they leave free.
Box draw_bars(DrawnSheet& sheet);

/// The heading of a view, on the left of the room.
void draw_view_title(DrawnSheet& sheet, double baseline_y, const std::string& words);

/// The line a stretch of the fit is drawn with, and the letter it is named by: "T" for
/// tight, "W" wide, "I" interference.
Pen fit_pen(FitVerdict verdict);
std::string fit_letter(FitVerdict verdict);

/// Keeps a line at the foot of the views for `write_left_out`.
void keep_foot_free(DrawnSheet& sheet);
/// Names the words left out of the views, on their own sheet; nothing if there are
/// none.
void write_left_out(DrawnSheet& sheet);

/// A hole: a dot, or a ring with a cross if it is not to be drilled.
void draw_hole(Page& page, const Point2& at, double radius_mm, bool drilled);

/// What keeps holes away from a side, and the places and zones on it.
SideObstacles named_on(const Job& job, const PerimeterSide& side);

/// A name as a joint file gives it, short enough for a view.
std::string short_name(const std::string& name);

/// A keep-out by its short name; a tight bend, which no joint file lists, with the
/// radius it is under.
std::string keep_out_name(const DrawnSheet& sheet, const Obstacle& obstacle);

/// A girth of a drill line, brought within its side.
Length within_side(Length girth, const PerimeterSide& side);

/// Points of a view, on the sheet.
std::vector<Point2> on_sheet(const View& view, const std::vector<Point2>& points);

}  // namespace sheerlap

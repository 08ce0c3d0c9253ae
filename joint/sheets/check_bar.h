#pragma once

#include "geometry/points.h"
#include "joint/length_text.h"
#include "joint/sheets/box.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// The length of the check bars of a sheet: 100 mm, or 4 in.
double check_bar_mm(LengthUnit unit);

/// The room a pair of check bars takes, its words beside it; the corner where the bars
/// meet is the box's bottom left.
Box check_bars_room(const Point2& corner, LengthUnit unit);

/// A bar of a stated length across the sheet and one up it, from one corner, with their
/// ends and tenths (or quarters of an inch) ticked: to be measured before anything on
/// the sheet is.
///
/// @param corner  where the bars meet, at their lower left
void draw_check_bars(Page& page, const Point2& corner, LengthUnit unit);

/// The bar across the sheet alone, where there is no room to go up.
void draw_check_bar_across(Page& page, const Point2& left_end, LengthUnit unit);

/// The bar up the sheet alone.
void draw_check_bar_up(Page& page, const Point2& lower_end, LengthUnit unit);

}  // namespace sheerlap

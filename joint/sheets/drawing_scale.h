#pragma once

#include <functional>
#include <string>

#include "geometry/points.h"
#include "joint/length_text.h"

namespace sheerlap {

/// The scale of a view: a length on paper to the same on the boat.
struct DrawingScale {
  double paper = 1;
  double boat = 1;

  double factor() const { return paper / boat; }
  /// "1:20", "2:1"; of those that an inch shop has a rule for, "1:24 (1/2 in = 1 ft)".
  std::string words(LengthUnit unit) const;
};

/// The largest scale of a shop's series at which a view fits; the smallest there is
/// where none does.
///
/// @param fits  true of a factor if it is of every smaller one
/// @source  ISO 5455 (1, 2 and 5 times a power of ten) with 15, 25, 30, 40 and 75 for
///          what would leave much of a sheet blank; in inches the architects' and
///          engineers' rules: common practice, no source
DrawingScale largest_scale(LengthUnit unit, const std::function<bool(double)>& fits);

/// Where a view lies on a sheet: mm across and up on the boat become mm on paper.
struct View {
  Point2 origin;      ///< of the boat's zero, on the sheet
  double across = 1;  ///< factor; below 0 the view is mirrored
  double up = 1;      ///< factor

  Point2 on_sheet(const Point2& point) const {
    return {origin.x() + point.x() * across, origin.y() - point.y() * up};
  }
};

}  // namespace sheerlap

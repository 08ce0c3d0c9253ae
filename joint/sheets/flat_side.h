#pragma once

#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "geometry/ruled_face.h"
#include "joint/perimeter.h"
#include "joint/sheets/drawing_scale.h"

namespace sheerlap {

/// A side laid flat on a sheet: girth on the drill line across, depth down.
struct FlatSide {
  /// All are referred to, not copied.
  FlatSide(const RuledFace& lip_outer,
           const PerimeterSide& laid_side,
           const View& on_sheet);

  /// Girths all along the side.
  std::vector<Length> samples() const;
  /// The depth of the drill line.
  double line_mm() const { return side.drill_line.line().depth_mm(); }
  double lap_mm(Length girth) const;
  /// A point of the side, on the sheet.
  Point2 at(Length girth, double depth_mm) const {
    return view.on_sheet({girth.in_mm(), -depth_mm});
  }
  /// On the sheet, the sheer and the lap's low edge where it is deepest.
  double sheer_y() const { return view.origin.y(); }
  double low_y() const { return at(Length(), deepest_mm).y(); }

  const RuledFace& lip;
  const PerimeterSide& side;
  const View& view;
  double deepest_mm = 0;
};

}  // namespace sheerlap

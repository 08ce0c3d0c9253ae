#pragma once

#include <cstddef>
#include <vector>

#include "geometry/ruled_face.h"
#include "joint/sheer_curve.h"

namespace sheerlap {

/// What a span was before knots were put in.
struct SpanOrigin {
  std::size_t span = 0;
  double from_u_mm = 0, to_u_mm = 0;
};

/// A sheer with more knots than it had.
struct RefinedSheer {
  SheerCurve sheer;
  std::vector<SpanOrigin> origins;  ///< one a span
};

/// The same curve with more knots, which are no rows of the table; places at a knot
/// that is there already, within 0.001 mm, add none.
///
/// @param places  on spans of the curve
RefinedSheer with_knots(SheerCurve sheer, std::vector<Place> places);

/// The same face on a sheer with more knots.
/// @param face  with its thickness 0, on the curve before
RuledFace on_refined(const RuledFace& face, const RefinedSheer& refined);

}  // namespace sheerlap

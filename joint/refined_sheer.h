#pragma once

#include <vector>

#include "joint/sheer_curve.h"

namespace sheerlap {

/// The same curve with more knots, which are no rows of the table; places at a knot
/// that is there already, within 0.001 mm, add none.
///
/// @param places  on spans of the curve
SheerCurve with_knots(SheerCurve sheer, std::vector<Place> places);

}  // namespace sheerlap

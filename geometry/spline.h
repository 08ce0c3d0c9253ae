#pragma once

#include <vector>

#include "geometry/points.h"

namespace sheerlap {

/// The second derivatives, at its knots, of the C2 cubic spline through `points` with
/// the not-a-knot condition at both ends; by the chord-length parameter.
///
/// Two points give a straight line, three a parabola.
///
/// @param points  N >= 2, neighbours distinct
/// @returns  N vectors (1/mm)
std::vector<Vector3> open_spline_second_derivatives(const std::vector<Point3>& points);

/// The same for the periodic spline; the last point joins the first, which is not
/// repeated. N >= 3.
std::vector<Vector3> periodic_spline_second_derivatives(
    const std::vector<Point3>& points);

}  // namespace sheerlap

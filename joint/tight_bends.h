#pragma once

#include <utility>
#include <vector>

#include "geometry/quantity.h"
#include "joint/side_line.h"

namespace sheerlap {

/// The stretches of a side's line that bend tighter in plan than `radius_min`, as
/// girths on the line, in order.
///
/// The radius is that of the offset of the sheer on which the line lies at that place.
/// Where a sheer of chords has a kink that is no corner, the bend is that of the arc
/// that turns as much over half of both chords, and it reaches as far.
///
/// Stretches less than 1 mm apart are one: no head sits between them.
///
/// @param corners  one a knot: a corner is no bend
/// @accuracy  ends within 1e-9 mm; a stretch is missed only if it lies wholly between
///            two of 16 samples of one span
/// @source    derived: the offset o of a curve of curvature k, to the outside of the
///            bend, has the radius 1 / k + o
std::vector<std::pair<Length, Length>> tight_bends(const SideLine& line,
                                                   const std::vector<bool>& corners,
                                                   Length radius_min);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/quantity.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A gap of a boat that is out of a limit by no more than this equals it to rounding:
/// the knots of its hull face stand within 0.001 mm of girth of where it was read, and
/// a gap may change by 0.1 mm a mm along the girth. It is a hundredth of what a gauge
/// is read to.
inline constexpr double keeps_limit_mm = 1e-4;

/// A stretch of a side on which the gap is below or above a limit. Girths are on the
/// drill line.
struct OutStretch {
  Length from;
  Length to;
  Length worst;  ///< the gap furthest from the limit
  Length at;     ///< its girth
  Length depth;  ///< and how deep it is
};

/// The stretches of a side, by girth, with a gap below `limit` somewhere down the lap,
/// by more than `keeps_limit_mm` at the worst.
///
/// @accuracy  ends within 1e-6 mm of girth; a dip shorter than 10 mm of girth may be
///            passed over
std::vector<OutStretch> stretches_below(const Perimeter& perimeter,
                                        const PerimeterSide& side,
                                        Length limit);

/// The same with a gap above it.
std::vector<OutStretch> stretches_above(const Perimeter& perimeter,
                                        const PerimeterSide& side,
                                        Length limit);

}  // namespace sheerlap

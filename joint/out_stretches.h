#pragma once

#include <vector>

#include "geometry/quantity.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A stretch of a side on which the gap is below or above a limit. Girths are on the
/// drill line.
struct OutStretch {
  Length from;
  Length to;
  Length worst;  ///< the gap furthest from the limit
  Length at;     ///< its girth
  Length depth;  ///< and how deep it is
};

/// The stretches of a side, by girth, with a gap below `limit` somewhere down the lap.
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

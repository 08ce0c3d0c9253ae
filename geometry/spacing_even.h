#pragma once

#include "geometry/spacing_path.h"

namespace sheerlap {

/// The path with its rounding taken out: between two binding places (the ends, fixed
/// places, the edges of forbidden ground and of zones) the spaces that are equal but
/// for rounding become equal, and those at a limit keep it to the last digit. Points
/// that nothing binds stand midway between the ends, as far as the limits there go.
///
/// @param largest_mm  the space that no space of the path exceeds
/// @accuracy  within a row a stop moves by less than 1e-9 of the scale; a row that
///            would have to move more stays as it is
SpacingPath evened(const SpacingGround& ground,
                   const SpacingPath& path,
                   double largest_mm);

}  // namespace sheerlap

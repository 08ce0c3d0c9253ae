#pragma once

#include <cstddef>
#include <optional>

#include "geometry/spacing_ground.h"

namespace sheerlap {

/// The fewest points of a path from the start of the ground to its end.
///
/// @param at_most  how many points to try
/// @returns   nothing if no path has as few
/// @source    derived: breadth-first search over the ground that can be reached with
///            one point more; ground reached before is left out, as what can follow
///            depends on the place alone
std::optional<std::size_t> fewest_points(const SpacingGround& ground,
                                         const SpacingAllowance& allowance,
                                         std::size_t at_most);

/// The smallest largest space with which `points` points still make a path.
///
/// @param slack    of the limits; with it `points` is the fewest
/// @param known_mm the result is no less than this
/// @accuracy  1e-13, from above: the result itself makes a path
double smallest_largest_space(const SpacingGround& ground,
                              double slack,
                              std::size_t points,
                              double known_mm);

}  // namespace sheerlap

#pragma once

#include <optional>

#include "geometry/spacing_ground.h"

namespace sheerlap {

/// What has to be given up on a stretch that cannot keep its limits: of the paths with
/// the least excess over the greatest limits, and of those with the fewest points, the
/// one with the least sum of squared spaces says where the limits are exceeded.
///
/// @returns  nothing if there is no room for a point
std::optional<SpacingGiveWay> give_way_on(const SpacingGround& ground);

}  // namespace sheerlap

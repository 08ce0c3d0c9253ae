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

/// What has to give way on any path: the limits across forbidden ground that is wider
/// than they allow, with points on both its edges.
///
/// If a path keeps all other limits, no other way to give way has as little excess: a
/// space across such ground is no shorter than it and its limit no larger than that of
/// the ground alone, so that each has its excess at the least, and more if a point is
/// off an edge. Whether those points keep the least limits is to be asked after.
///
/// @returns  nothing if there is no such ground, if the least limits forbid the step,
///           or if an end distance, whose limit may be larger, might cross the ground
std::optional<SpacingGiveWay> forced_give_way(const SpacingGround& ground);

}  // namespace sheerlap

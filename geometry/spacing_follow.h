#pragma once

#include <vector>

#include "geometry/spacing_ground.h"
#include "geometry/spacing_pieces.h"
#include "geometry/spacing_way_back.h"

namespace sheerlap {

/// What a path may do about the greatest limits.
enum class GreatestLimits { Kept, Exceeded };

/// How paths go on.
struct SpacingRules {
  SpacingAllowance allowance;
  GreatestLimits limits = GreatestLimits::Kept;
  bool squares = true;                       ///< false: the sum of squares is left out
  const SpacingWayBack* way_back = nullptr;  ///< where given, no piece off it follows
};

/// All pieces that follow from one, with a point more.
///
/// Steps that exceed a greatest limit are left out where there is sure to be less
/// excess with a point in between.
std::vector<SpacingPiece> following(const SpacingPiece& piece,
                                    const SpacingGround& ground,
                                    const SpacingRules& rules);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <vector>

#include "geometry/result.h"

namespace sheerlap {

/// The least and the greatest space allowed (mm); 0 < least <= greatest.
struct SpaceLimits {
  double least_mm = 0;
  double greatest_mm = 0;
};

/// A stretch whose limits hold in place of the common ones.
struct SpaceZone {
  double from_mm = 0;
  double to_mm = 0;
  SpaceLimits limits;
};

/// An open interval in which no point may lie; its ends are allowed.
struct Forbidden {
  double from_mm = 0;
  double to_mm = 0;
};

/// How a stretch ends.
struct StretchEnd {
  /// true: the stretch goes on as its own mirror image, so that twice the distance
  /// from the end to the outer point is a space like any other, with half its
  /// weight in the sum of squares; a point may be on the end itself only if it is
  /// fixed, and then there is no such space. false: the outer point stands between
  /// `least_mm` and `greatest_mm` from the end, and that distance is no space.
  bool mirrored = false;
  double least_mm = 0;     ///< 0 <= least <= greatest
  double greatest_mm = 0;  ///< 0: there is a point on the end
};

/// Points to be placed on the line between `from_mm` and `to_mm`.
struct SpacingProblem {
  double from_mm = 0;
  double to_mm = 0;
  StretchEnd start;
  StretchEnd end;
  SpaceLimits limits;                ///< outside the zones
  std::vector<SpaceZone> zones;      ///< any order; where two overlap both hold
  std::vector<Forbidden> forbidden;  ///< any order, may overlap
  std::vector<double> fixed_mm;      ///< a point must be at each of these
};

/// A space (or an end distance) whose limit could not be kept. At a mirrored end it
/// goes from the end to the outer point, and the limit is half that of the space.
struct BridgedSpace {
  double from_mm = 0;
  double to_mm = 0;
  double limit_mm = 0;       ///< the limit that is not kept
  bool below_least = false;  ///< the space is too small, not too large
};

/// Where the points of one stretch lie.
struct Spacing {
  std::vector<double> points_mm;      ///< ascending
  std::vector<BridgedSpace> bridged;  ///< in order
  double largest_mm = 0;  ///< the largest space that keeps its limit; 0 if none
};

/// The best places for points along the stretches of one side.
///
/// A space that overlaps a zone (by more than nothing) keeps the zone's limits; one
/// that lies partly outside every zone keeps the common ones too. So a zone looser than
/// the common limits loosens the spaces wholly inside it, and a point on the edge of a
/// zone ends the zone's hold. Of all placings that keep every limit the result has,
/// over all the stretches together, the fewest points; among those the smallest largest
/// space; among those the least sum of squared spaces; and where points may still move
/// together, the distances at the ends are alike. Positions are real numbers. Spaces
/// between two binding points come out equal.
///
/// Where no placing keeps every limit, the greatest limits (of spaces and of the
/// distances at the ends) give way by as little as possible in all, with half weight at
/// mirrored ends; forbidden stretches, fixed points and the least spaces are kept.
/// Among the placings with that excess, those with the fewest points, among those the
/// least sum of squared spaces says where the limits are exceeded; end distances exceed
/// theirs only if no space can in their stead. So a keep-out wider than the greatest
/// space is bridged from its two edges, and an excess that may go anywhere is spread
/// evenly. The spaces that exceed their limits are listed as bridged, both their points
/// stay where they are, and the rest is placed by the rules above.
///
/// Two fixed points closer than the least space, and one closer to an end than its
/// least distance, are kept and listed with `below_least`. A stretch where no point can
/// stand (too short for the least distances at its ends, or wholly forbidden) has none,
/// and one bridged space, the whole stretch: its limit is the sum of the least
/// distances at the ends if they do not fit (`below_least`), otherwise the smaller
/// greatest one. Fixed points closer than the accuracy are one. Zones and forbidden
/// stretches may reach beyond the ends.
///
/// @param stretches  of one side, in any order; each is solved on its own but for
///                   the largest space, which is shared
/// @returns   one Spacing a stretch, in the same order
/// @errors    InvalidInput: limits that are not 0 < least <= greatest; a stretch, zone
///            or forbidden interval that ends before it starts; a fixed point outside
///            its stretch or inside a forbidden interval; not finite numbers
/// @accuracy  1e-9 of the greatest space; a space within that of its limit keeps it
/// @source    derived: exact dynamic programme over convex piecewise quadratic costs
Result<std::vector<Spacing>> space_out(const std::vector<SpacingProblem>& stretches);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/spacing_cost.h"
#include "geometry/spacing_interval.h"

namespace sheerlap {

/// What a challenger has to do better than the holder where both have the same excess.
enum class CostTie {
  Lost,       ///< nothing helps it
  BySquares,  ///< have less squares
  Won,        ///< nothing: to match is enough
};

/// When one cost is better than another.
struct CostOrder {
  double same_excess_mm = 0;  ///< excesses that differ by no more are the same
  CostTie tie = CostTie::BySquares;
};

/// Where the challenger is better than the holder, on the ground they share.
///
/// @returns  in order, disjoint; a single place is an interval of no length
std::vector<SpacingInterval> better_parts(const SpacingCost& challenger,
                                          const SpacingCost& holder,
                                          const CostOrder& order);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "joint/perimeter.h"
#include "joint/schedule.h"

namespace sheerlap {

/// What a step of the driving is for: to locate the deck, to hold it down all round, or
/// to fill in the rest.
enum class DrivingStage { Locate, Tack, Fill };

/// Fasteners driven at the same time: one, or two that stand opposite.
struct DrivingStep {
  DrivingStage stage = DrivingStage::Fill;
  std::string where;                  ///< "the bow", "transom corners, on the sides"
  std::vector<std::size_t> stations;  ///< one or two of the schedule's
};

/// A tack fastener stands at least at every so-maniest hole of a stretch.
/// @source  common practice, no source: every fourth to sixth
inline constexpr std::size_t tack_every = 6;

/// The order in which the fasteners of a boat are driven, so that the deck does not
/// walk across the hull: the bow, the aft ends or transom corners, other corners; then
/// pairs on both sides from the bow aft, every fourth to sixth hole of starboard with
/// the nearest of port, and the ends of every stretch; then the rest in pairs likewise.
/// The transom, where there is one, is driven in pairs from its corners inward.
///
/// Every hole that is drillable is in it once, and no other. Holes of starboard and
/// port are a pair if neither stands nearer to its neighbour's partner; what has no
/// partner is a step of its own.
///
/// @source  common practice, no source
std::vector<DrivingStep> driving_order(const Perimeter& perimeter,
                                       const Schedule& schedule);

}  // namespace sheerlap

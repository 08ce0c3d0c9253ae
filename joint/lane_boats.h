#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "geometry/lanes.h"
#include "joint/boat_model.h"

namespace sheerlap {

/// The errors of some boats, side by side.
struct LaneErrors {
  std::vector<Lane> whole;   ///< one an error of a part as a whole
  std::vector<Lanes> along;  ///< one an error along the joint: an amount a station
  Lanes normals;             ///< scratch
};

/// What errors do to boats side by side, the lid not moved.
struct LaneBoats {
  Lanes gaps;       ///< mm; at each station the top edge and then the low one
  Lane volume_ml;   ///< of the joint
  Lanes hole_gaps;  ///< mm
  Lanes hole_ways;  ///< from the lip's outer face to the hull's inner one, mm
};

/// Which of a boat's sets of errors: independent of each other.
enum class ErrorSet : std::uint32_t { First, Second };

/// Which boats a lane has.
struct BoatLane {
  std::uint64_t seed = 0;
  ErrorSet set = ErrorSet::First;
  std::array<std::uint64_t, lane_count> boats = {};  ///< their numbers
};

/// Draws the errors of a lane's boats: they follow from seed, set and each boat's
/// number alone. A boat's errors are independent of each other.
///
/// An even law along the joint is a normal field sent through its own distribution:
/// every point of it is even, and alike close by.
///
/// @param errors  written over; its memory is used again
void draw_errors(const BoatModel& model, const BoatLane& lane, LaneErrors& errors);

/// The boats with these errors.
/// @param boats  written over; its memory is used again
void apply_errors(const BoatModel& model, const LaneErrors& errors, LaneBoats& boats);

/// Changes one error of two sets of boats over.
/// @param error  of the inputs
void swap_error(const BoatModel& model,
                std::size_t error,
                LaneErrors& a,
                LaneErrors& b);

}  // namespace sheerlap

#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

#include "joint/boat_outcome.h"
#include "joint/lane_boats.h"
#include "joint/variance_tally.h"

namespace sheerlap {

/// Boats that are made up together, in a row.
inline constexpr std::size_t block_boats = 256;

/// What is answered of a boat with one error changed over, for each answer.
struct SwappedBoat {
  SwappedAnswers volume, margin, squeeze;
};

/// What a block of boats comes to.
struct BlockOutcome {
  std::size_t boats = 0;              ///< the first of `outcomes`
  std::vector<BoatOutcome> outcomes;  ///< `block_boats`, their memory is used again
  std::size_t swapped = 0;            ///< the first of `swaps`
  std::vector<SwappedBoat> swaps;
};

/// What is run.
struct BoatRun {
  const JudgeGround& ground;
  std::uint64_t seed = 0;
  std::size_t boats = 0;
  std::size_t swap_every = 1;  ///< of the boats, one in so many is swapped; up to 32
  double squeeze_cap_mm = 0;   ///< what a boat counts that no squeeze helps, for swaps
};

/// How a run goes on.
struct RunHooks {
  std::size_t threads = 1;
  const std::atomic<bool>* stop = nullptr;
  /// Given each block, in order, by one thread at a time.
  std::function<void(const BlockOutcome&)> block;
};

/// Makes up boats and judges them, block by block on some threads. Blocks are handed
/// over in order, and once it is to stop those that are begun are still ended, so that
/// what was handed over are the first boats, without a hole.
///
/// Memory does not grow with the boats: a thread waits when it is four blocks a thread
/// ahead.
void run_boats(const BoatRun& run, const RunHooks& hooks);

}  // namespace sheerlap

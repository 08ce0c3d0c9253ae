#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "geometry/quantity.h"
#include "joint/stretch.h"
#include "joint/tolerance_inputs.h"

namespace sheerlap {

/// A figure had from made-up boats, and the range that holds the true one in 95 of 100
/// such samples.
struct Estimate {
  double value = 0;
  double low = 0;
  double high = 0;
};

/// What 10, 50 and 90 boats in a hundred stay below.
struct Deciles {
  Estimate p10, p50, p90;
  double within = 0;  ///< values are told apart no finer than this
};

/// The shares of boats by what it takes to get the lid on; `unsqueezed`, `squeezed`,
/// `beyond` and `never` add up to 1.
struct SqueezeShares {
  Estimate on;          ///< every gap in the window, within the spreaders' limits
  Estimate unsqueezed;  ///< of those, with no squeeze at all
  Estimate squeezed;    ///< of those, only with a squeeze
  Estimate beyond;      ///< only with a squeeze beyond a limit
  Estimate never;       ///< not by ten times what the spreaders may do
};

/// How often one stretch of a side is to blame, the lid in its best place.
struct BlamedStretch {
  SideName side = SideName::Starboard;
  Length from, to;  ///< girth along the sheer
  /// Share of boats whose margin is held there; a boat that is held at several places
  /// counts at each by what more gap there would gain. They add up to 1.
  Estimate holds;
  Estimate tight;  ///< share of boats with a gap there below the window
  Estimate wide;   ///< share of boats with a gap there above it
};

/// What is laid and bought for a run of boats.
struct RunBuy {
  Volume laid;  ///< as beads, all boats together
  std::size_t packs = 0;
  std::size_t nozzles = 0;
};

/// The adhesive of boats as they are, ml.
struct ToleranceAdhesive {
  Deciles joint;       ///< between the faces over the bond band
  Deciles boat;        ///< one boat takes out of the packs, purge and waste with it
  Estimate mean;       ///< of `joint`
  Estimate deviation;  ///< standard deviation of `joint`
};

/// The run of boats that is bought for.
struct ToleranceRun {
  std::size_t boats = 0;
  Estimate laid_mean;   ///< ml, of the run's total
  Estimate laid_p90;    ///< ml, what 90 runs in a hundred stay below
  RunBuy nominal;       ///< every boat as drawn
  RunBuy at_p90;        ///< the 90th percentile of the run's total: what to buy
  RunBuy at_every_p90;  ///< every boat at its own 90th percentile: more than is wanted
};

/// How many fasteners of one length from stock.
struct LengthMix {
  std::optional<Length> length;     ///< none: no length in stock serves
  std::size_t nominal = 0;          ///< in a boat as drawn
  Estimate in_a_boat;               ///< mean
  std::optional<Estimate> run_p90;  ///< for the run, what 90 runs in a hundred need
};

/// Which part of an answer's variance an error brings.
struct VarianceShare {
  std::size_t error = 0;  ///< of the inputs
  Estimate first;         ///< by itself
  Estimate total;         ///< together with all it does with others
};

/// What drives an answer; empty where the answer does not vary.
struct VarianceShares {
  std::size_t boats = 0;              ///< made up for it
  std::vector<VarianceShare> volume;  ///< of the joint
  std::vector<VarianceShare> margin;
  std::vector<VarianceShare> squeeze;  ///< that is needed
};

/// How many boats in a hundred will fit, and what they take.
struct Tolerance {
  std::size_t boats = 0;  ///< made up and seated
  std::size_t asked = 0;  ///< more than `boats` if it was stopped
  std::uint64_t seed = 0;
  std::size_t stations = 0;  ///< of the joint at which gaps are looked at, both edges
  std::size_t solved_afresh = 0;  ///< boats whose quick seating was not proved
  SqueezeShares shares;
  double nominal_margin_mm = 0;  ///< the boat as drawn, in its best place
  Estimate margin_mean_mm;
  Deciles margin_mm;
  /// The squeeze at the spreader that needs most, of boats that need any and that it
  /// helps; none without spreaders or where no boat is so.
  std::optional<Deciles> squeeze_mm;
  std::vector<BlamedStretch> stretches;  ///< starboard, port, transom; by girth
  ToleranceAdhesive adhesive;
  std::optional<ToleranceRun> run;  ///< if the joint has an order
  std::vector<LengthMix> lengths;   ///< ascending, what is not served last
  VarianceShares drives;
};

}  // namespace sheerlap

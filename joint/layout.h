#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/pitch_limits.h"

namespace sheerlap {

/// Consecutive holes with equal spaces, between two fixed points.
struct LayoutRun {
  Length from;
  Length to;
  std::size_t spaces = 0;
  Length pitch;
};

/// A stretch whose limit could not be kept.
struct Bridge {
  Length from;
  Length to;
  Length pitch;  ///< the space there is
  Length limit;  ///< the space that was asked for
  /// What stands in the way, in shop words, and whose limit it is, if it is not the
  /// joint file's own.
  std::string what;
};

struct LayoutSide {
  SideName name = SideName::Starboard;
  std::vector<Length> girths;        ///< running, on the drill line, ascending
  std::vector<std::string> because;  ///< one a hole
  Length largest_pitch;              ///< 0 if there are fewer than two holes
  Length smallest_pitch;
  std::vector<LayoutRun> runs;
  std::vector<Bridge> bridged;
};

struct Layout {
  std::size_t count = 0;
  Length largest_pitch;
  Length smallest_pitch;
  std::vector<LayoutSide> sides;
  Checks checks;
};

/// Where the fasteners go: the fewest that keep every limit, among those the
/// smallest largest space, among those the most even; side by side.
///
/// A space keeps the limits of all the ground it covers: the joint file's and those
/// given here, whichever is the tighter. Across a smooth end the space keeps the limits
/// of its own side, as with zones. Where a limit is below the least space it gives way
/// to that, and a check fails.
///
/// @errors  a keep-out, place or zone that does not lie on its side; limits that
///          `pitch_limit_errors` finds fault with
Result<Layout> layout(const Joint& joint,
                      const Perimeter& perimeter,
                      const PitchLimits& limits = {});

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The greatest space a stretch of the drill line bears, and whose limit that is.
struct PitchLimit {
  Length from;  ///< running girth on the side's drill line
  Length to;
  Length greatest;    ///< 0: it bears none, however small
  std::string whose;  ///< in shop words, behind "allowed by": "the class rule"
};

/// How far from a corner, an opening or an end the first hole may stand.
struct EndLimit {
  Length at;        ///< girth on the side's drill line
  Length greatest;  ///< the joint file's end_min holds where it is more
};

/// The limits of one side, in any order; where two overlap both hold, and where there
/// is none the joint file's limits hold alone.
struct SidePitchLimits {
  SideName side = SideName::Starboard;
  std::vector<PitchLimit> limits;
  std::vector<EndLimit> ends = {};
};

using PitchLimits = std::vector<SidePitchLimits>;

/// What makes limits unfit to be held.
///
/// @returns  InvalidInput at "pitch_limits[N]": a side the joint has not; at
///           "pitch_limits[N].limits[K]": girths that are not finite and in order, a
///           greatest space below 0 or not finite
Errors pitch_limit_errors(const PitchLimits& limits, const Perimeter& perimeter);

/// All the limits given for one side.
std::vector<PitchLimit> limits_of(SideName side, const PitchLimits& limits);

/// Likewise those of its ends.
std::vector<EndLimit> end_limits_of(SideName side, const PitchLimits& limits);

}  // namespace sheerlap

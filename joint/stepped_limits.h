#pragma once

#include <string>
#include <vector>

#include "joint/pitch_limits.h"

namespace sheerlap {

/// The greatest space at one girth, and whose limit that is.
struct LimitSample {
  Length girth;
  Length greatest;    ///< 0 or more; may be infinite
  std::string whose;  ///< as `PitchLimit` has it
};

/// How finely a limit is told.
struct LimitSteps {
  /// Greatest spaces above this need not be told apart: the joint file's pitch_max, or
  /// the length of the side. Finite, above 0.
  Length most = unlimited_pitch;
  /// How far a step may be below the limit, as a part of it; above 0, below 1.
  double share = 0.01;
  /// How far it may be below it in any case: finer than a hole is drilled. Above 0.
  Length least_step = Length::mm(0.1);
};

/// A limit that varies along the girth, as the fewest stretches of one greatest space
/// each.
///
/// The limit runs straight from sample to sample; two samples at one girth are a jump,
/// and no limit is asked between the two. Samples above `most` are taken as that. The
/// name of a limit holds halfway to the neighbouring samples, and no stretch goes over
/// a change of name. A stretch's greatest space is the least the limit has on it: never
/// above the limit, and below it by no more than `share` of it or `least_step`,
/// whichever is more. The samples in reverse order give the same stretches in reverse.
///
/// @param samples  by ascending girth
/// @returns   from the first sample to the last without a hole, in order; none if the
///            samples have no length
/// @source    derived: a part of a stretch that may have one greatest space may have
/// one
///            too. So cutting as late as can be from either end takes the fewest
///            stretches, cut k from the start is no earlier than cut k from the end,
///            and any choice of early cuts from the start and late ones from the end
///            fits.
std::vector<PitchLimit> stepped_limits(const std::vector<LimitSample>& samples,
                                       const LimitSteps& steps = {});

}  // namespace sheerlap

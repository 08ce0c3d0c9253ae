#pragma once

#include <atomic>
#include <cstddef>
#include <functional>

#include "geometry/result.h"
#include "joint/adhesive.h"
#include "joint/boat_pattern.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/schedule.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// How boats are made up, and who is told of it.
struct ToleranceHooks {
  std::size_t threads = 1;  ///< the answers do not depend on it
  /// Told how many of the boats are done, from one thread at a time.
  std::function<void(std::size_t done, std::size_t boats)> progress;
  /// Once it is true no more boats are begun, and what is done is answered for.
  const std::atomic<bool>* stop = nullptr;
};

/// The boat as drawn, and what boats built have all of them.
struct NominalBoat {
  const AdhesivePlan& adhesive;
  const Schedule* schedule = nullptr;  ///< none: no fasteners are counted
  const BuiltPattern* built =
      nullptr;  ///< none: every boat is as drawn, but for errors
};

/// How many boats in a hundred will fit: boats made up by the errors of the process,
/// each with the lid seated in its best place, as `seating` does it.
///
/// A boat's gaps are those of the drawing and, straight in each error, what the errors
/// do to them; its best place is that of the linear programme with the slopes of the
/// boat as drawn. Adhesive and screws are those of the boat as it is joined: squeezed
/// no more than it needs to bring every gap into the window; a boat for which the
/// limits are not enough counts in its best place within them. A squeeze is followed up
/// to ten times its limit.
///
/// The boats of one seed are the same ones, to the last bit, on any number of threads.
///
/// @accuracy  a boat's margin differs from that by its true gaps in the second order of
///            its errors: by under 0.003 mm where a hull of 6 m has shrunk by 6 mm
/// @param joint    with its adhesive and its tolerance
/// @param nominal  of this joint and perimeter
/// @errors  at "error[N]...": an error that the joint's shape does not allow;
///          at "spreader[N]...": as `seating`
Result<Tolerance> tolerance(const Joint& joint,
                            const Perimeter& perimeter,
                            const NominalBoat& nominal,
                            const ToleranceHooks& hooks);

}  // namespace sheerlap

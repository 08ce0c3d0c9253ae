#pragma once

#include <optional>

#include "geometry/result.h"
#include "joint/adhesive.h"
#include "joint/boat.h"
#include "joint/check.h"
#include "joint/fit.h"
#include "joint/going_on.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/order.h"
#include "joint/perimeter.h"
#include "joint/schedule.h"
#include "joint/strength.h"

namespace sheerlap {

/// The parts of a job that are asked for; what they need is worked out with them.
struct Parts {
  bool fit = false;
  bool adhesive = false;
  bool layout = false;
  bool schedule = false;
  bool order = false;
  bool strength = false;
  /// A part whose table is missing is left out with a warning; otherwise it is an
  /// error.
  bool leave_out = false;

  /// Every part for which the joint file has the tables.
  static Parts all() { return {true, true, true, true, true, true, true}; }
};

/// A joint with everything that was worked out for it.
struct Job {
  Joint joint;
  Perimeter perimeter;
  std::optional<Fit> fit;
  std::optional<GoingOn> going_on;
  std::optional<Layout> layout;
  std::optional<Schedule> schedule;
  std::optional<AdhesivePlan> adhesive;
  std::optional<Order> order;
  std::optional<Strength> strength;
  std::optional<Boat> boat;  ///< the one boat that the parts are of, if it was read
  Explanations reasons;      ///< as `reasons_of` has them
  Checks checks;             ///< of the perimeter and of every part, in that order
};

/// Works out the parts asked for and those they need.
///
/// `adhesive` needs the layout where there is a shop to plan the time for; `schedule`
/// needs the layout; `order` needs the adhesive and the schedule; `strength` needs the
/// schedule, and a layout whose pitch is left to the strength needs what that needs.
/// Where parts may be left out, the strength of a joint without loads is not asked for.
///
/// @errors  of the perimeter and of every part, in that order, each once; at
///          "adhesive", "order", "hull" ...: what a part needs is missing
Result<Job> work_out(Joint joint, const Parts& parts);

/// Tries every part for which there are tables, and keeps of it the perimeter, its
/// checks and what had to be left out: whether the input is right.
///
/// @errors  as `work_out`
Result<Job> try_out(Joint joint);

/// The worst state among the checks; Pass if there is none.
CheckState verdict(const Checks& checks);

}  // namespace sheerlap

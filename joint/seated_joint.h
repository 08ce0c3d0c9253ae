#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/result.h"
#include "joint/adhesive_amounts.h"
#include "joint/check.h"
#include "joint/entry_path.h"
#include "joint/fit.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"
#include "joint/readings_gap.h"
#include "joint/schedule.h"

namespace sheerlap {

/// How many fasteners of one length a boat takes.
struct FastenersOfLength {
  std::optional<Length> length;  ///< none: no length in stock serves
  std::size_t count = 0;
};

/// The girth along the sheer of each verdict, all sides together.
struct VerdictLengths {
  Length good, tight, wide, interference;
};

/// What follows from a fit: how much of it is good, what adhesive it takes and what
/// fasteners.
struct JointFollows {
  VerdictLengths girth;
  AdhesiveAmounts adhesive;
  std::vector<FastenersOfLength> fasteners;  ///< by length, those without one last
  /// The way down that the joint file asks for, on this hull.
  std::optional<EntryPath> entry;
};

/// The joint as drawn, and with the lid in its best place on the hull as it is there.
struct SeatedJoint {
  JointFollows drawn;
  JointFollows seated;
};

/// What follows from a fit as it is.
///
/// @param holes  of the drawing
/// @errors  of `adhesive_plan` and `schedule`
Result<JointFollows> joint_follows(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const Fit& fit,
                                   const Layout& holes);

/// What follows where gaps are corrected.
///
/// @param holes        of the drawing: the jig is the same for every boat
/// @param corrections  of the gap, by the seating
/// @errors  of `boat_perimeter`, `fit`, `adhesive_plan` and `schedule`
Result<JointFollows> seated_follows(const Joint& joint,
                                    const Perimeter& drawn,
                                    const Layout& holes,
                                    const std::vector<SideCorrections>& corrections);

/// Whether the lid comes down to its best place, on the hull as it then stands.
Check seated_entry_check(const Joint& joint, const EntryPath& entry);

/// How a fit's girth is shared among the verdicts.
VerdictLengths verdict_lengths(const Fit& fit);

/// The fasteners of a schedule, by length.
std::vector<FastenersOfLength> fasteners_by_length(const Schedule& schedule);

}  // namespace sheerlap

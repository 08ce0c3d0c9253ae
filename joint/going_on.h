#pragma once

#include <optional>

#include "geometry/result.h"
#include "joint/check.h"
#include "joint/entry_path.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/seated_joint.h"
#include "joint/seating.h"

namespace sheerlap {

/// How the lid goes on: its way down, and its best place on the box.
struct GoingOn {
  EntryPath straight;
  std::optional<EntryPath> turned;  ///< if the joint file gives a turned entry
  Seating seating;
  /// What follows from the seating; none where no hull face can be found for it.
  std::optional<SeatedJoint> seated;
  Checks checks;

  /// The way down that the joint file asks for.
  const EntryPath& entry() const { return turned ? *turned : straight; }
};

/// The lid's ways down, on the hull in its moulded shape, and its best seating.
///
/// @param joint  with its adhesive, whose gap window it is
/// @errors       of `seating`
Result<GoingOn> going_on(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap

#pragma once

#include <optional>

#include "joint/check.h"
#include "joint/entry_path.h"
#include "joint/seating.h"

namespace sheerlap {

/// How the lid goes on: its way down, and its best place on the box.
struct GoingOn {
  EntryPath straight;
  std::optional<EntryPath> turned;  ///< if the joint file gives a turned entry
  Seating seating;
  Checks checks;
};

}  // namespace sheerlap

#pragma once

#include "joint/documents/json_parts.h"
#include "joint/going_on.h"

namespace sheerlap {

/// The lid's ways down: `entry`, with what the joint file asks for beside the way
/// straight down.
Json entry_json(const Fit& fit, const Joint& joint, const GoingOn& going_on);

/// The best seating and what follows from it.
///
/// @param read  of one boat as it was read: what brings its hull to the mould is not
///              known then
Json seating_json(const GoingOn& going_on, bool read);

}  // namespace sheerlap

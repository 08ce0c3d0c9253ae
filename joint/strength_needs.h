#pragma once

#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/joint.h"

namespace sheerlap {

/// What the strength needs and the joint file does not have: one error a value, at its
/// address; empty if nothing is missing.
Errors strength_lacks(const Joint& joint);

/// The joint with the strengths of its laminates that are not given worked out from
/// their glass, where that is given; what was worked out is put on record among the
/// defaults.
Joint with_estimates(Joint joint);

}  // namespace sheerlap

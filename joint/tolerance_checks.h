#pragma once

#include "joint/check.h"
#include "joint/joint.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// What a foreman and a buyer must know of made-up boats before they go by them.
/// @param joint  with its tolerance
Checks tolerance_checks(const Joint& joint, const Tolerance& tolerance);

}  // namespace sheerlap

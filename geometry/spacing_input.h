#pragma once

#include "geometry/spacing.h"

namespace sheerlap {

/// What is wrong with the problems given to `space_out`; empty if nothing is.
Errors spacing_errors(const std::vector<SpacingProblem>& stretches);

}  // namespace sheerlap

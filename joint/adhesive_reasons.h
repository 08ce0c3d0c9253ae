#pragma once

#include "joint/adhesive.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why a joint takes the adhesive it does, and the time.
/// @param fasteners  that the plan was made with
Explanations adhesive_reasons(const Joint& joint,
                              const AdhesivePlan& plan,
                              std::size_t fasteners);

}  // namespace sheerlap

#pragma once

#include "joint/check.h"
#include "joint/field_estimate.h"
#include "joint/joint.h"
#include "joint/tolerance_answers.h"
#include "joint/wanted_share.h"

namespace sheerlap {

/// What a foreman and a buyer must know of made-up boats before they go by them.
/// @param joint  with its tolerance
Checks tolerance_checks(const Joint& joint,
                        const Tolerance& tolerance,
                        const WantedShare& wanted);

/// Whether the correlation length given by the joint file is one that boats built
/// allow.
Check correlation_check(const FieldEstimate& face, Length given);

}  // namespace sheerlap

#pragma once

#include "joint/reasons/reason.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// How the figures of made-up boats were had.
Explanations tolerance_reasons(const Tolerance& tolerance);

}  // namespace sheerlap

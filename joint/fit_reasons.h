#pragma once

#include "joint/fit.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why the gaps of a fit and its way down are what they are.
Explanations fit_reasons(const Perimeter& perimeter, const Fit& fit);

}  // namespace sheerlap

#pragma once

#include "joint/fit.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Where a hull face stands by: the drawing, or the readings of one boat.
enum class HullFrom { Drawing, Readings };

/// Why the gaps of a fit and its way down are what they are.
Explanations fit_reasons(const Perimeter& perimeter, const Fit& fit, HullFrom hull);

}  // namespace sheerlap

#pragma once

#include "joint/perimeter.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why the lengths of a perimeter are what they are.
Explanations perimeter_reasons(const Perimeter& perimeter);

}  // namespace sheerlap

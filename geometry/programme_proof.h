#pragma once

#include "geometry/linear_programme.h"

namespace sheerlap {

/// Stops the program unless an optimum is proved: x keeps rows and bounds, the prices
/// weigh them together to the objective, both values agree, and a price above 0 stands
/// only on what binds, all within 1e-9 of their own size. It is counted from the
/// programme and from what is handed over, not from how it was found.
///
/// @param optimum  its prices are none of them negative
void assert_proved(const BoundedProgramme& programme, const ProgrammeOptimum& optimum);

}  // namespace sheerlap

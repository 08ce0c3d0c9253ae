#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// How bond and fasteners share the load while the bond is whole: for information.
/// @param job  with its strength
std::string sharing_text(const Job& job, const NumberStyle& style);

/// Closing the lip onto the wet adhesive, and the lip on the cured layer.
/// @param job  with its strength
std::string clamping_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

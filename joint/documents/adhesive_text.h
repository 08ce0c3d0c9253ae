#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The adhesive of one boat: volumes and packs, the beads to lay, and the time.
/// @param job  with its adhesive plan
std::string adhesive_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

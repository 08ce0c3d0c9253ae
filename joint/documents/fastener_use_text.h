#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What the fasteners carry when the bond is gone, hole by hole.
/// @param job  with its strength
std::string fastener_use_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The whole job on a page: lengths, and of each part worked out what decides.
std::string summary_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

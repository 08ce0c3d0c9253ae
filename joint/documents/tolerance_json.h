#pragma once

#include "joint/documents/json_parts.h"
#include "joint/tolerance_job.h"

namespace sheerlap {

/// Made-up boats for other programs, metric: shares from 0 to 1, lengths in mm, volumes
/// in ml; each figure with the ends of its range, `low` and `high`.
Json tolerance_json(const ToleranceJob& job);

}  // namespace sheerlap

#pragma once

#include "joint/documents/json_parts.h"
#include "joint/job.h"

namespace sheerlap {

/// The whole result as one object, for a caller that adds to it.
Json result_object(const Job& job);

}  // namespace sheerlap

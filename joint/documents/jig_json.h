#pragma once

#include "joint/documents/json_parts.h"

namespace sheerlap {

/// The pieces of the jig, each with its holes and bushes.
Json jigs_json(const Schedule& schedule, const JigRules& rules);

/// What holes are off by, and what a lip and a hull drilled apart would need.
Json setting_out_json(const Schedule& schedule);

}  // namespace sheerlap

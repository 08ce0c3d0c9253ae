#pragma once

#include "joint/candidates.h"
#include "joint/documents/json_parts.h"

namespace sheerlap {

/// `options` of the result: the fasteners and adhesives to choose from, in order.
Json options_json(const Candidates& candidates);

}  // namespace sheerlap

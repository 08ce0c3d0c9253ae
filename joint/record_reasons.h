#pragma once

#include <cstddef>

#include "joint/boat_pattern.h"
#include "joint/field_estimate.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// How the hull's face was had from a record.
/// @param boats  of the record
Explanations record_reasons(const FieldEstimate& face,
                            const PatternReach& pattern,
                            std::size_t boats);

}  // namespace sheerlap

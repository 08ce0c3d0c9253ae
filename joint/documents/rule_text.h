#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/rule_rows.h"

namespace sheerlap {

/// Published rules beside the joint: what each asks, what the joint has, its source and
/// how surely it is known.
std::string rule_text(const RuleRows& rows, const NumberStyle& style);

}  // namespace sheerlap

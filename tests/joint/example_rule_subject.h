#pragma once

#include <string>

#include "joint/rule_rows.h"

namespace sheerlap {

/// A joint bonded with adhesive and bolted with M6 at 100 mm, its edge distances 20,
/// its least end distance 30, a lap of 46; lip 5 thick, hull 6.
RuleSubject example_rule_subject();

/// The first row of a rule; the test fails if there is none.
RuleRow row_named(const RuleRows& rows, const std::string& rule);

}  // namespace sheerlap

#pragma once

#include <string_view>

#include "joint/published_rules.h"
#include "joint/rule_rows.h"

namespace sheerlap {

/// "greatest pitch", "least edge distance" ...
std::string_view quantity_words(RuleQuantity quantity);

/// Where a rule applies: "hull to deck, bonded with structural adhesive".
std::string_view place_words(RulePlace place);

/// How surely a rule is known: "read", "from memory, confirm" ...
std::string_view sureness_words(RuleSureness sureness);

/// "pass", "warn", "fail", "information" or "does not apply".
std::string_view state_words(RuleState state);

}  // namespace sheerlap

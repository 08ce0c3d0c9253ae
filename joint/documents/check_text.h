#pragma once

#include <string>

#include "joint/check.h"
#include "joint/documents/number_style.h"
#include "joint/joint.h"

namespace sheerlap {

/// One line a foreman understands: whether to stop, to look first, or to go on.
std::string verdict_line(const Checks& checks);

/// What a check asks, what there is against its limit, and where the limit comes from.
std::string check_sentence(const Check& check, const NumberStyle& style);

/// The checks that fail, then those that warn, with value, limit and source; empty if
/// there is none.
std::string check_list(const Checks& checks, const NumberStyle& style);

/// The defaults that stand in the result; empty if there is none.
std::string default_list(const Joint& joint, const NumberStyle& style);

/// The cautions, under their heading.
std::string caution_list();

}  // namespace sheerlap

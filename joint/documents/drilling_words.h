#pragma once

#include <optional>
#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// Bits and fasteners keep the unit of their size: an inch size has # or / in it.
NumberStyle tool_style(const FastenerSpec& spec, const NumberStyle& style);

/// Which bit goes how deep, and in which order; one paragraph.
/// @param job  with its schedule
std::string order_of_work(const Job& job, const NumberStyle& style);

/// The marks of a side, or of all, at which no hole is to be drilled, and why; empty if
/// there is none.
std::string not_to_drill(const Schedule& schedule, std::optional<SideName> side);

/// What stack, length and chamfer or countersink are.
std::string stack_words(const Job& job, const NumberStyle& style);

/// How the bit is held square.
std::string square_words();

}  // namespace sheerlap

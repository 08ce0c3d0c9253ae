#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// The strength as a calculation to read: what is used of bond and fasteners, the loads
/// by cause, the bond station by station, the fasteners hole by hole, the load share,
/// clamping, published rules, what was left out, and what is from memory.
///
/// Lengths are in the style's unit; forces and stresses are N and N/mm2 always.
/// @param job  with its strength
std::string strength_text(const Job& job,
                          const NumberStyle& style,
                          const OriginWords& words_of);

/// The same in a sentence or two, for the summary.
std::string strength_summary(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

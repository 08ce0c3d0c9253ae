#pragma once

#include <string>

#include "joint/job.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// The workings of what one hole carries; none without the strength.
/// @param job   with its schedule
/// @param mark  of one of its holes
Explanations hole_explanations(const Job& job, const std::string& mark);

}  // namespace sheerlap

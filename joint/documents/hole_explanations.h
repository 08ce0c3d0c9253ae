#pragma once

#include <string>

#include "joint/job.h"

namespace sheerlap {

/// The workings of one hole; none without the strength.
/// @param job   with its schedule
/// @param mark  of one of its holes
Explanations hole_explanations(const Job& job, const std::string& mark);

}  // namespace sheerlap

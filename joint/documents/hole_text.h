#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// Everything known of one hole: why it is there, what it stands among, what it
/// carries, and what a step either way would change.
///
/// @param job   with its schedule
/// @param mark  of one of its holes
std::string hole_text(const Job& job,
                      const std::string& mark,
                      const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What a builder does to set the lid on the box, as a list.
/// @param job  with its fit and how the lid goes on, as for all of these
std::string what_to_do(const Job& job, const NumberStyle& style);

/// The lid on its ways down.
std::string entry_text(const Job& job, const NumberStyle& style);

/// The best seating beside the lid as drawn, what holds it and the proof, and the
/// hull's shape at its beam readings and spreaders.
std::string seating_text(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The hull that the lid is lowered over: "the hull as moulded", or of one boat "the
/// hull as it was read".
std::string hull_words(const Job& job);

/// From what the limits of the spreaders count in one boat, in a sentence; empty of the
/// boat as drawn.
std::string limits_from(const Job& job);

/// What a builder does to set the lid on the box, a sentence each, in order: where the
/// hull is squeezed, how the lid is lowered and then moved, and the worst gap then.
/// Where no seating fits, that the lid is not to be lowered, by how much, where, and
/// what holds it; the best there is stands last.
/// @param job  with its fit and how the lid goes on
std::vector<std::string> seating_steps(const Job& job, const NumberStyle& style);

/// The same of the squeeze, the move and the gap, in short and in one line.
std::string seating_in_short(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

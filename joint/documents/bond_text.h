#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// What the bond carries: its worst place, a table at the stations, and where a formula
/// does not hold.
/// @param job  with its strength
std::string bond_text(const Job& job, const NumberStyle& style);

/// "OVER" for a use beyond 1, "high" from 0.9 on; empty below.
std::string use_flag(double use);

/// A use to two decimals, or to as many as tell one beyond 1 from 1; "-" where it is
/// beyond all numbers.
std::string use_text(double use);

}  // namespace sheerlap

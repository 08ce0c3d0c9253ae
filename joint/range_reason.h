#pragma once

#include <string>
#include <vector>

#include "joint/reasons/working.h"
#include "joint/tolerance_answers.h"
#include "joint/tolerance_figures.h"

namespace sheerlap {

/// Adds value and ends of a figure to a working, and which paths they tell of.
void add_range(WrittenWorking& work,
               Explanation& reason,
               const RangeWords& words,
               const Estimate& estimate,
               const std::vector<std::string>& paths);

/// The explanation of one figure with its range.
/// @param alike  paths of the figures that are had in this way, its own among them
Explanation range_reason(const RangeWords& words,
                         const std::string& what,
                         const Estimate& estimate,
                         const std::string& figure,
                         const std::vector<std::string>& alike);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "joint/reasons/reason.h"

namespace sheerlap {

/// The numbers of a result of which no reason tells, "*" for places in lists.
/// @param echoes  paths of numbers that are no answers
std::set<std::string> untold_numbers(const nlohmann::ordered_json& result,
                                     const Explanations& reasons,
                                     const std::vector<std::string>& echoes);

/// Fails the test where a reason does not end in the number that the result has.
/// @returns  how many were compared
std::size_t compare_told(const nlohmann::ordered_json& result,
                         const Explanations& reasons);

/// The line of a reason with some letters; null if there is none.
const Reason* line_of(const Explanation& reason, const std::string& letters);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

namespace sheerlap {

/// Runs the command `record`.
///
/// @param arguments  of which `asks_for_record` is true
/// @returns  the exit status
int run_record(const std::vector<std::string>& arguments);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

namespace sheerlap {

/// Runs the program: reads, works out, prints and writes.
///
/// @param arguments  without the program's name
/// @param epoch      SOURCE_DATE_EPOCH, null if it is not set
/// @returns  the exit status: 0 done, 1 a check fails, 2 the input is wrong, 3 a file
///           could not be read or written
int run(const std::vector<std::string>& arguments, const char* epoch);

}  // namespace sheerlap

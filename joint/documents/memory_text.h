#pragma once

#include <string>

#include "joint/job.h"

namespace sheerlap {

/// Values and formulas behind the strength that were remembered and not read, each
/// once; empty if there is none.
/// @param job  with its strength
std::string memory_text(const Job& job);

}  // namespace sheerlap

#pragma once

#include "cli/toml_table.h"
#include "joint/reading_limits.h"

namespace sheerlap {

/// The table [readings]: what the gap readings of a boat are accepted by.
ReadingLimits read_reading_limits(TomlTable& root);

}  // namespace sheerlap

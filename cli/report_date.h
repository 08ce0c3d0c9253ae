#pragma once

#include <optional>
#include <string>

#include "geometry/result.h"

namespace sheerlap {

/// The date that reports carry: that of SOURCE_DATE_EPOCH in UTC as "2024-05-01"; none
/// if the variable is not set or empty.
///
/// @param epoch  the variable's value, null if it is not set: seconds since 1970
/// @errors  InvalidInput: not a whole number of seconds from year 1970 to 9999
Result<std::optional<std::string>> report_date(const char* epoch);

}  // namespace sheerlap

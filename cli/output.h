#pragma once

#include <cstdio>
#include <string>

#include "geometry/result.h"

namespace sheerlap {

/// Writes all of a text to a stream and sees it off.
/// @errors  Unreadable: the device is full, the reader has gone
Result<void> write_out(std::FILE* stream, const std::string& text);

/// Writes errors to standard error, one a line; control characters in them are blanked.
/// @returns  the exit status that they call for: 3 if a file could not be read or
///           written, else 2
int report_errors(const Errors& errors);

}  // namespace sheerlap

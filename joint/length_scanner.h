#pragma once

#include <string_view>

#include "geometry/result.h"
#include "joint/length_text.h"

namespace sheerlap {

/// No boat is longer; the bound catches a number in the wrong unit.
inline constexpr Length longest_length = Length::mm(1e6);

/// A length from text that is more than a bare number: see `length_from_text`.
///
/// @param text  without spaces about it; plain primes, quotes and minus signs
Result<Length> scanned_length(std::string_view text, LengthUnit unit);

}  // namespace sheerlap

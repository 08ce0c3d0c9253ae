#pragma once

#include <string>
#include <string_view>

#include "geometry/quantity.h"
#include "geometry/result.h"

namespace sheerlap {

/// The unit of a joint file's bare numbers.
enum class LengthUnit { Millimetres, Inches };

/// A length from a bare number.
///
/// @errors  InvalidInput, `where` empty: NaN, infinity, or beyond 1 km either way
Result<Length> length_from_number(double number, LengthUnit unit);

/// A length from text: the one place where text becomes a length.
///
/// Read are a bare number in `unit`; a number with mm, cm, m, in or ft ("6.4 m");
/// inches and feet with a fraction ("1/4 in", "4-5/8 in", "3 ft 4-5/8 in",
/// "3' 4 5/8\""); and the feet-inches-eighths of a table of offsets ("3-4-5"), where
/// a trailing + or - is a sixteenth more or less. A sign may lead any of them.
///
/// @errors  InvalidInput, `where` empty: empty text, NaN, infinity, anything else
/// @source  feet-inches-eighths: common practice, no source; the meaning of the
///          trailing + and - is from memory, confirm with the table's maker
Result<Length> length_from_text(std::string_view text, LengthUnit unit);

/// A length for a message, in `unit`, to six significant digits: "76.2 mm".
std::string length_words(Length length, LengthUnit unit);

}  // namespace sheerlap

#pragma once

#include <string>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The girth along a side's sheer at which it has the x given.
/// @errors  at `where`: an x that the side does not have, or more than once
Result<Length> sheer_girth_at_x(const PerimeterSide& side,
                                Length x,
                                const std::string& where);

/// The place of the sheer at a girth on a side's drill line; where a mitre carries that
/// on past a span, the end of the span.
Place place_on_sheer(const PerimeterSide& side, Length girth);

/// The girth on a side's drill line at a place of its sheer.
Length drill_girth(const PerimeterSide& side, Place place);

}  // namespace sheerlap

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

}  // namespace sheerlap

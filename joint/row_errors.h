#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// Errors that name a knot of the curve ("knot[N]"), made to name the row of the table,
/// each once: what is wrong on the port image of a row is wrong to starboard too.
Errors at_rows(Errors errors, const std::vector<SheerKnot>& knots);

/// Errors of corners by their rows; after 20 the rest are counted.
Errors corner_errors(const Errors& errors, const std::vector<SheerKnot>& knots);

}  // namespace sheerlap

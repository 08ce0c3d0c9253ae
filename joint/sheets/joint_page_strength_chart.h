#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/sheets/bond_course.h"

namespace sheerlap {

/// The use of the bond along one side as SVG, along the sheer's girth: the limit, the
/// worst place where it is here, where the load jumps and what loads a part of the
/// side, where the gap is a wedge, and openings.
std::string use_chart(const BondCourse& course,
                      UseAxis axis,
                      const BondPoint& worst,
                      const NumberStyle& style);

}  // namespace sheerlap

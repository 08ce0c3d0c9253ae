#pragma once

#include <functional>
#include <vector>

#include "geometry/enclosed_volume.h"
#include "geometry/points.h"

namespace sheerlap {

/// The volume inside a tube through sections of the same even number of points, as a
/// closed triangle mesh measured by CGAL: the first half of a section runs down one
/// wall, the second half up the other.
///
/// @param closed  the last section joins the first; else both ends are capped
double tube_volume_mm3(const std::vector<std::vector<Point3>>& sections, bool closed);

/// The area of a sheet through rows of points, as a triangle mesh measured by CGAL.
double sheet_area_mm2(const std::vector<std::vector<Point3>>& rows);

/// The limit of a value that nears it by the square of the step, from those at `steps`
/// and twice as many.
double richardson(const std::function<double(int steps)>& value, int steps);

/// The space between two faces over a part of a span, meshed with so many steps; where
/// the faces cross only the depths at which `outer` is outside count.
double meshed_volume_mm3(const RuledFace& inner,
                         const RuledFace& outer,
                         DepthBand band,
                         const SpanPart& part,
                         int steps);

/// The same over a whole span, cut by the mitres at its knuckles; the lap is to be the
/// same at each knot.
double meshed_mitred_volume_mm3(const RuledFace& inner,
                                const RuledFace& outer,
                                DepthBand band,
                                std::size_t span,
                                int steps);

}  // namespace sheerlap

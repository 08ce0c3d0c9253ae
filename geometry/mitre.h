#pragma once

#include <cstddef>

#include "geometry/result.h"
#include "geometry/ruled_face.h"

namespace sheerlap {

/// Where the two parts of a face meet at a knuckle of its curve, at one depth.
///
/// Each part is carried straight on, or cut back, until both stand over the same
/// point in plan; the depth is that below the part's own carried-on curve.
struct Mitre {
  double end_u_mm = 0;    ///< where the part before the knuckle ends, in its last span
  double start_u_mm = 0;  ///< where the part after it starts, in its first span
  double area_mm2 = 0;    ///< in plan, between the two sections square to the curve at
                          ///< the knuckle and the face; negative where they overlap
};

/// @param knot  a knuckle of the face's curve, where two spans join
/// @errors  InvalidInput at "knot[N]": the parts do not meet within the spans
///          that touch the knuckle (the curve turns back on itself, or the face is
///          offset further than the span is long)
/// @accuracy  1e-12 of the spans' length
Result<Mitre> mitre(const RuledFace& face, std::size_t knot, double depth_mm);

}  // namespace sheerlap

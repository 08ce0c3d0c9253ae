#pragma once

#include <cstddef>
#include <vector>

#include "geometry/result.h"
#include "geometry/ruled_face.h"

namespace sheerlap {

/// Where the two parts of a face meet at a knuckle of its curve, at one depth.
///
/// Each part is carried straight on, or cut back, until both stand over the same
/// point in plan; the depth is that below the part's own carried-on curve. A part may
/// be cut back over knots that stand closer to the knuckle than the cut goes.
struct Mitre {
  Place end;    ///< where the part before the knuckle ends
  Place start;  ///< where the part after it starts
};

/// @param knot  a knuckle of the face's curve, where two spans join
/// @errors  InvalidInput at "knot[N]": the parts do not meet (the curve turns back on
///          itself, or the face is offset further than the next corner allows)
/// @accuracy  1e-12 of the spans' length
Result<Mitre> mitre(const RuledFace& face, std::size_t knot, double depth_mm);

/// A stretch of a face's line at one depth, in one span; run backwards where `to_u` is
/// less than `from_u`.
struct MitreStretch {
  std::size_t span = 0;
  double from_u = 0;
  double to_u = 0;
};

/// The stretches a mitre adds to the line of a face between the sections square to the
/// curve at its knuckle: from the section before it to the mitre, and on to the section
/// after it. Run backwards they are cut off.
std::vector<MitreStretch> mitre_stretches(const RuledFace& face,
                                          std::size_t knot,
                                          double depth_mm,
                                          const Mitre& mitre);

/// The area in plan that a mitre adds between the curve and the face (mm2); negative
/// where a face outboard of the curve is cut back.
///
/// @errors  see `mitre`
Result<double> mitre_area_mm2(const RuledFace& face, std::size_t knot, double depth_mm);

}  // namespace sheerlap

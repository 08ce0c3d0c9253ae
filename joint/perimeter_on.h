#pragma once

#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/joint_faces.h"
#include "joint/perimeter.h"
#include "joint/sheer_curve.h"

namespace sheerlap {

/// The perimeter of a joint on a sheer curve and faces that are there already; without
/// the checks of the curve's fairness.
///
/// @errors  as `perimeter`
Result<Perimeter> perimeter_on(const Joint& joint,
                               const SheerCurve& sheer,
                               const JointFaces& faces);

}  // namespace sheerlap

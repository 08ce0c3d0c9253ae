#pragma once

#include <memory>

#include "geometry/ruled_face.h"
#include "joint/joint.h"
#include "joint/sheer_curve.h"

namespace sheerlap {

/// The faces of a joint, all hung from its sheer.
struct JointFaces {
  std::shared_ptr<const RuledFace> sheer;      ///< no offset: the sheer at every depth
  std::shared_ptr<const RuledFace> hull;       ///< outer face of the hull
  std::shared_ptr<const RuledFace> lip;        ///< inner face of the lip
  std::shared_ptr<const RuledFace> lip_outer;  ///< outer face of the lip
};

/// The faces by the rows of the sheer table; at a knot that is no row the offsets lie
/// straight between the rows beside it, by girth along the sheer.
JointFaces joint_faces(const Joint& joint, const SheerCurve& sheer);

}  // namespace sheerlap

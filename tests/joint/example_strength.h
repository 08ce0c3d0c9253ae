#pragma once

#include "joint/joint.h"

namespace sheerlap {

/// The joint with laminates and an adhesive whose strengths are known, and a line load.
///
/// Both laminates E 8000, G 3000, nu 0.3; strengths 80 in tension, 50 in shear, 14
/// between plies, 100 under a shank; adhesive Ea 1000, Ga 370, 10 in shear, 6 in peel;
/// fasteners of 700 N/mm2. Factors 1.
Joint with_strength(Joint joint, const JointLoad& load);

}  // namespace sheerlap

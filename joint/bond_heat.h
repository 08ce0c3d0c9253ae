#pragma once

#include "joint/bond_strength.h"
#include "joint/joint.h"
#include "joint/joint_loads.h"
#include "joint/mechanics/thermal_mismatch.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// The shear flow that a warm deck puts on a place, N/mm; 0 where the joint has no free
/// end, or no [deck_warmth].
/// @param point  its place, gaps and width are read
double heat_flow(const Joint& joint, const JointLoads& loads, const BondPoint& point);

/// The working of `heat_flow` at a place that has a free end, and of the force locked
/// in.
std::vector<Reason> heat_reasons(const Joint& joint,
                                 const JointLoads& loads,
                                 const BondPoint& point);

}  // namespace sheerlap

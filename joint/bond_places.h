#pragma once

#include <optional>
#include <vector>

#include "joint/bond_strength.h"

namespace sheerlap {

/// The places of a side at which its bond is looked at, with their gaps and loads, not
/// yet worked: at every knot of the sheer on both sides of it, at every jump of the
/// load, and between them no further apart than `step`; by girth.
///
/// @errors  at "sheer": a face that the other cannot be measured against
Result<std::vector<BondPoint>> bond_places(const Joint& joint,
                                           const Perimeter& perimeter,
                                           const PerimeterSide& side,
                                           const JointLoads& loads,
                                           Length step);

/// One such place, at a girth on the drill line where there is joint.
///
/// @returns  nothing where no gap can be measured
std::optional<BondPoint> bond_place(const Joint& joint,
                                    const Perimeter& perimeter,
                                    const PerimeterSide& side,
                                    const JointLoads& loads,
                                    Length on_line);

}  // namespace sheerlap

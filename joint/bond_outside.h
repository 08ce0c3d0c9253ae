#pragma once

#include <vector>

#include "joint/bond_strength.h"

namespace sheerlap {

/// The limits of the bond's formulas that a joint does not keep, and where.
std::vector<OutsideValidity> bond_outside(const Joint& joint,
                                          const std::vector<BondPoint>& along);

}  // namespace sheerlap

#pragma once

#include "joint/strength.h"

namespace sheerlap {

/// The reasons of a strength, each with the numbers of the result that it tells of, and
/// the place that those of the bond are told of.
/// @param reasons   as the strength's parts give them
/// @param strength  whose reasons they are
Explanations strength_told(Explanations reasons, const Strength& strength);

}  // namespace sheerlap

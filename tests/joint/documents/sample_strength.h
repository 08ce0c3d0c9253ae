#pragma once

#include "joint/joint.h"
#include "joint/strength.h"

namespace sheerlap {

/// Loads of each kind, for the sample job.
Loads sample_loads();

/// A strength made by hand, every part filled: a bond with a place that uses too much
/// between two stations, holes of which one uses too much, rules of every state.
Strength sample_strength();

}  // namespace sheerlap

#pragma once

#include "joint/mechanics/foundation_beam.h"

namespace sheerlap {

/// Half a beam on an elastic layer from a load to a place of symmetry.
struct SolvedBeam {
  double at_load;   ///< deflection under the load, mm
  double at_end;    ///< deflection at the far end, mm
  double moment;    ///< moment under the load, N mm
  double residual;  ///< of the equations solved, relative
};

/// The same beam by another way: E I y'''' + k_f y = 0 by finite differences of second
/// order in deflection and moment, a sparse system of 2 (steps + 1) unknowns.
///
/// @param length  from the load to the next place of symmetry, mm
/// @accuracy  about (beta length/steps)^2
SolvedBeam beam_by_differences(const FoundationBeam<double>& beam,
                               double P,
                               double length,
                               int steps);

}  // namespace sheerlap

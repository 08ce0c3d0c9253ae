#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// An overlap whose adherends stretch and whose adhesive shears, for each mm of width.
///
/// Adherend 1 is loaded at its end x = -l/2, adherend 2 at x = +l/2.
template <class Number>
struct ShearLap {
  Number Ga;    ///< shear modulus of the adhesive, N/mm2
  Number eta;   ///< thickness of the bond, mm
  Number E1t1;  ///< stiffness of adherend 1, modulus times thickness, N/mm
  Number E2t2;
  Number l;  ///< length of the overlap, mm
};

/// The shear lag of the overlap, lam.
/// @source  O. Volkersen, Luftfahrtforschung 15 (1938); the parameter agrees with ESDU
///          80011 (1980), page 1
template <class Working>
auto shear_lag(Working& work, const ShearLap<typename Working::Number>& lap) {
  return work.figure({"lam", "shear lag of the overlap", "1/mm",
                      "Volkersen 1938; agrees with the parameter of ESDU 80011 (1980)",
                      "linear adhesive; adherends that stretch and do not bend"},
                     sqrt(lap.Ga / lap.eta * (1 / lap.E1t1 + 1 / lap.E2t2)));
}

}  // namespace sheerlap

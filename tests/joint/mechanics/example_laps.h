#pragma once

#include "joint/mechanics/plastic_lap.h"
#include "joint/mechanics/single_lap.h"

namespace sheerlap {

/// The lap most of the checks are worked on: two 5 mm laminates, 50 mm overlap, 3 mm of
/// stiff paste; without the lap's own slope, as the check values were worked.
inline SingleLap<double> paste_lap() {
  return {370, 1000, 3, 8000, 5, 0.3, 1, 50, BondStrain::OfFaces};
}

/// The same with the letters of its terms, for a working that is written.
inline SingleLap<Term> written(const SingleLap<double>& lap) {
  return {Term::named("Ga", lap.Ga),
          Term::named("Ea", lap.Ea),
          Term::named("eta", lap.eta),
          Term::named("E", lap.E),
          Term::named("t", lap.t),
          Term::named("nu", lap.nu),
          Term::named("k_b", lap.k_b),
          Term::named("l", lap.l),
          lap.strain};
}

inline PlasticLap<Term> written(const PlasticLap<double>& bond) {
  return {written(bond.lap), Term::named("tau_p", bond.tau_p),
          Term::named("g_p", bond.g_p), bond.edge};
}

}  // namespace sheerlap

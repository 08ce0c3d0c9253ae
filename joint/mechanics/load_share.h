#pragma once

#include "joint/mechanics/lap_shear.h"

namespace sheerlap {

/// A bonded overlap with one row of fasteners along its middle.
template <class Number>
struct SharedLap {
  ShearLap<Number> lap;
  Number s;  ///< pitch of the fasteners, mm
  Number C;  ///< flexibility of one fastener, mm/N; > 0
};

/// The share of the load in the fasteners if the laminates did not stretch,
/// share_rigid.
///
/// The limit of `fastener_share` for a soft bond, and never less than it.
template <class Working>
auto rigid_share(Working& work, const SharedLap<typename Working::Number>& shared) {
  const auto K_adh =
      work.figure({"K_adh", "stiffness of the bond along one pitch", "N/mm",
                   "derived: shear modulus times area over thickness",
                   "whole bond, linear; laminates that do not stretch"},
                  shared.lap.Ga * shared.s * shared.lap.l / shared.lap.eta);
  return work.figure({"share_rigid", "fasteners' share of the load, rigid laminates",
                      "1", "derived: two springs side by side",
                      "whole bond; laminates that do not stretch; fasteners that fit "
                      "their holes"},
                     1 / shared.C / (1 / shared.C + K_adh));
}

/// The share of the load in the fasteners while the bond is whole, share.
///
/// The slip of the two laminates obeys slip'' = lam^2 slip; half the load comes in at
/// either end as seen from the middle, where the row takes out the force slip/C.
/// Unequal laminates give the same share, with their own lam.
/// @param shared  Ga > 0, eta > 0
template <class Working>
auto fastener_share(Working& work, const SharedLap<typename Working::Number>& shared) {
  const auto lam = shear_lag(work, shared.lap);
  return work.figure(
      {"share", "fasteners' share of the load while the bond is whole", "1",
       "derived: shear lag with one row of springs at mid-overlap",
       "whole, linear bond; one row, midway; fasteners that fit their holes: in "
       "clearance holes they carry nothing until the clearance is taken up"},
      lam / 2 * csch(lam * shared.lap.l / 2) /
          (shared.s * shared.C * shared.lap.Ga / shared.lap.eta +
           lam / 2 * coth(lam * shared.lap.l / 2)));
}

}  // namespace sheerlap

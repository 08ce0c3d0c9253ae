#pragma once

#include "joint/mechanics/squeeze.h"

namespace sheerlap {

/// The force on each mm below which a full strip does not move, F_ty.
/// @param ty  yield stress, Pa
template <class Working>
auto yield_force(Working& work,
                 const Squeeze<typename Working::Number>& strip,
                 const typename Working::Number& ty) {
  return work.figure(
      {"F_ty", "force at which the paste begins to move", "N/mm",
       "derived: yield stress on both faces, pressure falling to the edges",
       "slow limit; gap much less than the width, no slip, no gel yet"},
      ty / 1000 / 1000 * power(strip.w, 2) / (2 * strip.eta));
}

/// The force on each mm that holds a bead at a gap, f_hold.
/// @param A    section of the bead, mm2
/// @param ty   yield stress, Pa
/// @param eta  gap, mm
template <class Working>
auto holding_force(Working& work,
                   const typename Working::Number& A,
                   const typename Working::Number& ty,
                   const typename Working::Number& eta) {
  return work.figure({"f_hold", "force that brings the bead to the gap", "N/mm",
                      "derived: as for a full strip of width A/eta, slow",
                      "paste not yet at the edges, no gel yet"},
                     ty / 1000 / 1000 * power(A, 2) / (2 * power(eta, 3)));
}

/// The gap at which a bead stops under a clamping force, eta_f, mm.
/// @param A   section of the bead, mm2
/// @param ty  yield stress, Pa
/// @param f   force on each mm, N/mm; > 0
template <class Working>
auto final_gap(Working& work,
               const typename Working::Number& A,
               const typename Working::Number& ty,
               const typename Working::Number& f) {
  return work.figure({"eta_f", "gap at which the bead stops", "mm",
                      "derived: the gap whose holding force is f",
                      "paste not yet at the edges, time enough, no gel yet"},
                     power(ty / 1000 / 1000 * power(A, 2) / (2 * f), 1. / 3));
}

/// No more than the force on each mm at any speed, F_high; F_mu + F_ty is no less.
template <class Working>
auto highest_squeeze_force(Working& work,
                           const Squeeze<typename Working::Number>& strip,
                           const typename Working::Number& ty) {
  const auto F_mu = squeeze_force(work, strip);
  const auto F_ty = yield_force(work, strip, ty);
  return work.figure({"F_high", "force to squeeze the paste out, at most", "N/mm",
                      "derived: limit of fast closing", "paste with a yield stress"},
                     F_mu + 1.5 * F_ty);
}

/// No less than the force on each mm at any speed, F_low.
template <class Working>
auto lowest_squeeze_force(Working& work,
                          const Squeeze<typename Working::Number>& strip,
                          const typename Working::Number& ty) {
  const auto F_mu = squeeze_force(work, strip);
  const auto F_ty = yield_force(work, strip, ty);
  return work.figure({"F_low", "force to squeeze the paste out, at least", "N/mm",
                      "derived: limit of slow closing", "paste with a yield stress"},
                     F_mu + F_ty);
}

}  // namespace sheerlap

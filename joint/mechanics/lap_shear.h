#pragma once

#include "joint/mechanics/lap_shear_words.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// An overlap whose adherends stretch and whose adhesive shears, for each mm of width.
///
/// Adherend 1 is loaded at its end x = -l/2, adherend 2 at x = +l/2. For shear flow
/// along the joint l is the width of the bond, and the stiffnesses are shear moduli of
/// the laminates times their thickness.
/// Everything is > 0; a gap of 0 has no shear lag.
template <class Number>
struct ShearLap {
  Number Ga;    ///< shear modulus of the adhesive, N/mm2
  Number eta;   ///< thickness of the bond, mm
  Number E1t1;  ///< stiffness of adherend 1, modulus times thickness, N/mm
  Number E2t2;
  Number l;  ///< length of the overlap, mm
};

/// What an overlap is asked to carry.
template <class Number>
struct ShearLoad {
  Number P;   ///< pull for each mm of the joint, N/mm; of either sign
  Number e1;  ///< free thermal strain of adherend 1, no unit
  Number e2;
};

/// The shear lag of the overlap, lam.
/// @source  O. Volkersen, Luftfahrtforschung 15 (1938); the parameter agrees with ESDU
///          80011 (1980), page 1
template <class Working>
auto shear_lag(Working& work,
               const ShearLap<typename Working::Number>& lap,
               const ShearLapWords& words = shear_across) {
  return work.figure(words.lag, sqrt(lap.Ga / lap.eta * (1 / lap.E1t1 + 1 / lap.E2t2)));
}

/// How unlike the adherends are, Om: 0 for equal ones, within +-1.
template <class Working>
auto stiffness_unbalance(Working& work,
                         const ShearLap<typename Working::Number>& lap,
                         const ShearLapWords& words = shear_across) {
  return work.figure(words.unbalance, (lap.E1t1 - lap.E2t2) / (lap.E1t1 + lap.E2t2));
}

/// The load over the length, tau_avg.
template <class Working>
auto mean_shear(Working& work,
                const ShearLap<typename Working::Number>& lap,
                const typename Working::Number& P,
                const ShearLapWords& words = shear_across) {
  return work.figure(words.mean, P / lap.l);
}

/// The greatest shear stress in the adhesive under the load alone, tau_max.
///
/// It stands where the stiffer adherend ends, and the more flexible carries all.
/// @param P  >= 0
/// @source   derived: Volkersen's overlap, at the end with the more shear
template <class Working>
auto peak_shear(Working& work,
                const ShearLap<typename Working::Number>& lap,
                const typename Working::Number& P,
                const ShearLapWords& words = shear_across) {
  const auto lam = shear_lag(work, lap, words);
  const auto Om = stiffness_unbalance(work, lap, words);
  return work.figure(
      words.peak,
      P * lam / 2 * (coth(lam * lap.l / 2) + abs(Om) * tanh(lam * lap.l / 2)));
}

/// The shear stress at x = -l/2, where adherend 2 ends, with what heat adds.
/// @returns  positive where the load shears it
template <class Working>
auto end_1_shear(Working& work,
                 const ShearLap<typename Working::Number>& lap,
                 const ShearLoad<typename Working::Number>& load,
                 const ShearLapWords& words = shear_across) {
  const auto lam = shear_lag(work, lap, words);
  const auto Om = stiffness_unbalance(work, lap, words);
  const auto bend = tanh(lam * lap.l / 2);
  return work.figure(words.end_1,
                     load.P * lam / 2 * (coth(lam * lap.l / 2) - Om * bend) -
                         lap.Ga / lap.eta * (load.e2 - load.e1) * bend / lam);
}

/// The shear stress at x = +l/2, where adherend 1 ends, with what heat adds.
template <class Working>
auto end_2_shear(Working& work,
                 const ShearLap<typename Working::Number>& lap,
                 const ShearLoad<typename Working::Number>& load,
                 const ShearLapWords& words = shear_across) {
  const auto lam = shear_lag(work, lap, words);
  const auto Om = stiffness_unbalance(work, lap, words);
  const auto bend = tanh(lam * lap.l / 2);
  return work.figure(words.end_2,
                     load.P * lam / 2 * (coth(lam * lap.l / 2) + Om * bend) +
                         lap.Ga / lap.eta * (load.e2 - load.e1) * bend / lam);
}

/// The shear stress at a distance x from the middle of the overlap, tau_x.
///
/// cosh(lam x)/sinh(lam l/2) and sinh(lam x)/cosh(lam l/2) are written with falling
/// exponentials, so that long overlaps stay within the numbers.
/// @param x  -l/2 .. l/2
template <class Working>
auto shear_at(Working& work,
              const ShearLap<typename Working::Number>& lap,
              const ShearLoad<typename Working::Number>& load,
              const typename Working::Number& x,
              const ShearLapWords& words = shear_across) {
  const auto lam = shear_lag(work, lap, words);
  const auto Om = stiffness_unbalance(work, lap, words);
  const auto even = work.figure(
      words.even, (exp(lam * (x - lap.l / 2)) + exp(-lam * (x + lap.l / 2))) / 2 *
                      (1 + coth(lam * lap.l / 2)));
  const auto odd = work.figure(
      words.odd, (exp(lam * (x - lap.l / 2)) - exp(-lam * (x + lap.l / 2))) / 2 *
                     (1 + tanh(lam * lap.l / 2)));
  return work.figure(words.at, load.P * lam / 2 * (even + Om * odd) +
                                   lap.Ga / lap.eta * (load.e2 - load.e1) * odd / lam);
}

}  // namespace sheerlap

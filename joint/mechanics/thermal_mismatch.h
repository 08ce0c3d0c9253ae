#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// Two strips bonded along their length that heat would stretch unequally.
template <class Number>
struct ThermalLap {
  Number Ga;    ///< shear modulus of the adhesive, N/mm2
  Number eta;   ///< thickness of the bond, mm
  Number w;     ///< width of the bond, mm
  Number EA_h;  ///< stiffness of the strip of hull that acts, modulus times area, N
  Number EA_d;  ///< of the strip of deck
  Number L;     ///< length of the joint between its free ends, mm
  Number eps;   ///< free thermal strain of the deck less the hull's, no unit
};

inline constexpr std::string_view thermal_mismatch_source =
    "derived: Volkersen's overlap (1938), heat in place of load";
inline constexpr std::string_view thermal_mismatch_validity =
    "elastic and straight, both ends free; a closed joint has no free ends, and only "
    "the force locked in and its corners count";

/// What the working of a thermal lap starts from.
template <class Number>
struct ThermalTerms {
  Number S;    ///< flexibility of both strips, 1/N
  Number lam;  ///< how fast the stress falls from the ends, 1/mm
};

template <class Working>
ThermalTerms<typename Working::Number> thermal_terms(
    Working& work, const ThermalLap<typename Working::Number>& lap) {
  const auto S = work.figure(
      {"S_T", "flexibility of both strips", "1/N", "derived: strips stretched together",
       "the strips that really act together"},
      1 / lap.EA_h + 1 / lap.EA_d);
  return {S, work.figure({"lam_T", "how fast the thermal stress falls from the ends",
                          "1/mm", thermal_mismatch_source, thermal_mismatch_validity},
                         sqrt(lap.Ga * lap.w * S / lap.eta))};
}

/// The shear stress along the joint at its free ends, tau_T.
template <class Working>
auto thermal_end_shear(Working& work, const ThermalLap<typename Working::Number>& lap) {
  const auto lam = thermal_terms(work, lap).lam;
  return work.figure({"tau_T", "thermal shear stress at the free ends", "N/mm2",
                      thermal_mismatch_source, thermal_mismatch_validity},
                     lap.eps * lap.Ga / lap.eta * tanh(lam * lap.L / 2) / lam);
}

/// How far the faces slide on each other at the free ends, mm.
template <class Working>
auto thermal_end_slip(Working& work, const ThermalLap<typename Working::Number>& lap) {
  const auto tau_T = thermal_end_shear(work, lap);
  return work.figure({"slip_T", "how far the faces slide at the free ends", "mm",
                      "derived: shear of the bond", thermal_mismatch_validity},
                     tau_T * lap.eta / lap.Ga);
}

/// The force locked in at the middle of the joint, N_T, N.
template <class Working>
auto thermal_locked_force(Working& work,
                          const ThermalLap<typename Working::Number>& lap) {
  const auto [S, lam] = thermal_terms(work, lap);
  return work.figure({"N_T", "force locked in at mid-length", "N",
                      thermal_mismatch_source, thermal_mismatch_validity},
                     lap.eps / S * (1 - sech(lam * lap.L / 2)));
}

/// The length from a free end over which the locked-in force builds up to 95 %, mm.
template <class Working>
auto thermal_build_up(Working& work, const ThermalLap<typename Working::Number>& lap) {
  const auto lam = thermal_terms(work, lap).lam;
  return work.figure({"x_T", "length over which the force builds up", "mm",
                      "derived: 1 - exp(-3) = 0.95 of the force is there",
                      "a joint of twice this length or more"},
                     3 / lam);
}

/// The shear stress along the joint at a distance x from a free end, tau_Tx.
/// @param x  0 .. L
template <class Working>
auto thermal_shear_at(Working& work,
                      const ThermalLap<typename Working::Number>& lap,
                      const typename Working::Number& x) {
  const auto lam = thermal_terms(work, lap).lam;
  return work.figure({"tau_Tx", "thermal shear stress at x from a free end", "N/mm2",
                      thermal_mismatch_source, thermal_mismatch_validity},
                     lap.eps * lap.Ga / lap.eta / lam *
                         (exp(-lam * x) - exp(-lam * (lap.L - x))) / 2 *
                         (1 + tanh(lam * lap.L / 2)));
}

}  // namespace sheerlap

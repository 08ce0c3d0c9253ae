#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// A lip over uncured paste, which pushes back and does not spring.
template <class Number>
struct LipSpan {
  Number f;  ///< back-pressure of the paste on each mm of the joint, N/mm
  Number E;  ///< modulus of the lip along the joint, N/mm2
  Number I;  ///< `lip_inertia`, mm4
};

/// The second moment of a lip that bends in and out between fasteners, I, mm4.
/// @param h  height of the lip, mm
/// @param t  its thickness, mm
template <class Working>
auto lip_inertia(Working& work,
                 const typename Working::Number& h,
                 const typename Working::Number& t) {
  return work.figure({"I", "second moment of the lip", "mm4", "derived: a rectangle",
                      "lip alone; the deck corner above makes it stiffer"},
                     h * power(t, 3) / 12);
}

/// How far the lip bends out between fasteners, dev, mm.
/// @param s  pitch, mm
template <class Working>
auto lip_deflection(Working& work,
                    const LipSpan<typename Working::Number>& lip,
                    const typename Working::Number& s) {
  return work.figure(
      {"dev", "bend of the lip between fasteners", "mm",
       "derived: one span of a continuous beam under an even load",
       "pitch over 10 thicknesses, small bends, lower edge free: the soft "
       "side"},
      lip.f * power(s, 4) / (384 * lip.E * lip.I));
}

/// The pitch at which the lip bends out by no more than `g`, s_g, mm.
/// @param lip  f > 0
/// @param g    allowed change of the gap, mm
template <class Working>
auto pitch_for_gap_change(Working& work,
                          const LipSpan<typename Working::Number>& lip,
                          const typename Working::Number& g) {
  return work.figure(
      {"s_g", "widest pitch for the allowed change of gap", "mm",
       "derived: one span of a continuous beam under an even load",
       "pitch over 10 thicknesses, small bends, lower edge free: the soft "
       "side"},
      power(384 * lip.E * lip.I * g / lip.f, 0.25));
}

/// The force that pulls a lip in where it stands off, F_pull, N.
/// @param lip  f is not read
/// @param d0   how far it stands off, mm
/// @param Lm   over which length, mm; > 0
template <class Working>
auto closing_force(Working& work,
                   const LipSpan<typename Working::Number>& lip,
                   const typename Working::Number& d0,
                   const typename Working::Number& Lm) {
  return work.figure({"F_pull", "force that pulls the lip in", "N",
                      "derived: beam with both ends held, pulled in the middle",
                      "small bends, lower edge free: the soft side"},
                     192 * lip.E * lip.I * d0 / power(Lm, 3));
}

}  // namespace sheerlap

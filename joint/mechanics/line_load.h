#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// What runs along the joint and what runs across it.
template <class Number>
struct LineLoad {
  Number q_V;  ///< shear flow from vertical shear, N/mm
  Number q_T;  ///< shear flow from torsion, N/mm
  Number p_T;  ///< load down or up the lip, N/mm
};

/// The load on each mm of the joint, r.
template <class Working>
auto line_resultant(Working& work, const LineLoad<typename Working::Number>& load) {
  const auto q = work.figure({"q", "shear flow along the joint", "N/mm",
                              "derived: vertical shear and torsion on their worse side",
                              "both largest at once"},
                             load.q_V + load.q_T);
  return work.figure({"r", "load on each mm of the joint", "N/mm",
                      "derived: along and across, square to each other",
                      "both largest at the same place"},
                     sqrt(power(q, 2) + power(load.p_T, 2)));
}

/// The load on one fastener of a row, F.
/// @param r  load on each mm, N/mm
/// @param s  pitch, mm
template <class Working>
auto fastener_load(Working& work,
                   const typename Working::Number& r,
                   const typename Working::Number& s) {
  return work.figure(
      {"F", "load on one fastener", "N", "derived: load on each mm times the pitch",
       "the fasteners alone, one row, each its pitch's share"},
      r * s);
}

/// The widest pitch at which the fasteners alone carry the load, s_F.
/// @param r        load on each mm, N/mm; > 0
/// @param F_allow  what one may carry, N
/// @param n        rows of fasteners
template <class Working>
auto strength_pitch(Working& work,
                    const typename Working::Number& r,
                    const typename Working::Number& F_allow,
                    const typename Working::Number& n) {
  return work.figure({"s_F", "widest pitch at which the fasteners carry the load", "mm",
                      "derived: what n fasteners carry over the load on each mm",
                      "the fasteners alone, the load shared alike by the rows"},
                     n * F_allow / r);
}

/// The mean shear stress in the bond, tau_mean.
/// @param r  load on each mm, N/mm
/// @param b  width of the bond, mm; > 0
template <class Working>
auto mean_bond_stress(Working& work,
                      const typename Working::Number& r,
                      const typename Working::Number& b) {
  return work.figure({"tau_mean", "mean shear stress in the bond", "N/mm2",
                      "derived: load on each mm over the width of the bond",
                      "the mean alone: the ends of the overlap carry more"},
                     r / b);
}

}  // namespace sheerlap

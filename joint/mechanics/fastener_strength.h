#pragma once

#include <numbers>

#include "joint/reasons/working.h"

namespace sheerlap {

/// A load at one fastener, and what carries it.
template <class Number>
struct ShearAndPull {
  Number V;   ///< shear on the fastener, N
  Number Va;  ///< what it carries in shear alone, N
  Number N;   ///< pull along the fastener, N
  Number Na;  ///< what it carries in pull alone, N
};

/// How much of a static strength may be used.
template <class Number>
struct LoadAllowance {
  Number P;   ///< static strength, N
  Number kw;  ///< what is left of it hot and wet, 0 to 1
  Number f;   ///< factor asked for, 1 or more
};

/// What is left of a strength hot and wet.
/// @source  Akay and Kong Ah Mun, Composites 26 (1995) 451-456, abstract: about 10 %
///          less, for aramid and epoxy
inline constexpr double hot_wet_share = 0.9;

/// The stress area of a metric thread, As.
/// @param d  nominal diameter, mm
/// @param P  pitch of the thread, mm; 0.9382 P < d
template <class Working>
auto stress_area(Working& work,
                 const typename Working::Number& d,
                 const typename Working::Number& P) {
  return work.figure({"As", "stress area of the thread", "mm2",
                      "ISO 898-1, as reproduced on an engineering reference page",
                      "ISO metric threads; for a tapping thread an estimate only"},
                     std::numbers::pi / 4 * power(d - 0.9382 * P, 2));
}

/// What shears the fastener itself through its thread, Fv.
/// @param Rm  tensile strength of the metal, N/mm2
/// @param As  stress area, mm2
template <class Working>
auto fastener_shear(Working& work,
                    const typename Working::Number& Rm,
                    const typename Working::Number& As) {
  return work.figure(
      {"Fv", "load that shears the fastener", "N",
       "shear strength 0.6 of the tensile strength; from memory, confirm",
       "static; the plane of shear through the thread"},
      0.6 * Rm * As);
}

/// What tears the fastener itself, Ft.
/// @param Rm  tensile strength of the metal, N/mm2
/// @param As  stress area, mm2
template <class Working>
auto fastener_tension(Working& work,
                      const typename Working::Number& Rm,
                      const typename Working::Number& As) {
  return work.figure({"Ft", "load that tears the fastener", "N",
                      "ISO 898-1: strength times stress area", "static, no bending"},
                     Rm * As);
}

/// (V/Va)^2 + (N/Na)^2; the fastener holds as long as it is no more than 1.
template <class Working>
auto shear_and_pull(Working& work, const ShearAndPull<typename Working::Number>& load) {
  return work.figure(
      {"i_VN", "shear and pull together; no more than 1", "1",
       "interaction of squares, common for bolts; from memory, confirm", "static"},
      power(load.V / load.Va, 2) + power(load.N / load.Na, 2));
}

/// The share of what the fastener carries that shear and pull use together: it grows
/// with the load itself, and is 1 where `shear_and_pull` is.
template <class Working>
auto shear_and_pull_use(Working& work,
                        const ShearAndPull<typename Working::Number>& load) {
  const auto i_VN = shear_and_pull(work, load);
  return work.figure({"u_VN", "share of the fastener's strength in use", "1",
                      "derived: both loads times 1/u_VN make the sum of squares 1",
                      "shear and pull that grow together"},
                     sqrt(i_VN));
}

/// The pull that the fastener still carries beside its shear, N_V.
/// @param load  V <= Va; its N is not read
template <class Working>
auto pull_beside_shear(Working& work,
                       const ShearAndPull<typename Working::Number>& load) {
  return work.figure({"N_V", "pull the fastener still carries beside its shear", "N",
                      "interaction of squares, common for bolts; from memory, confirm",
                      "shear no more than the fastener carries alone"},
                     load.Na * sqrt(1 - power(load.V / load.Va, 2)));
}

/// What may be asked of a fastener, F_allow.
template <class Working>
auto allowable_load(Working& work,
                    const LoadAllowance<typename Working::Number>& allowance) {
  return work.figure(
      {"F_allow", "load that may be asked of one fastener", "N",
       "derived: strength, what is left of it hot and wet, and the factor",
       "static loads"},
      allowance.P * allowance.kw / allowance.f);
}

/// The load near which repeated loading does not wear the laminate out, P_fat.
/// @param P  static strength, N
template <class Working>
auto fatigue_level(Working& work, const typename Working::Number& P) {
  return work.figure(
      {"P_fat", "load that may come and go", "N",
       "Akay and Kong Ah Mun, Composites 26 (1995) 451-456, abstract",
       "about a quarter of the static strength; seen on aramid and epoxy"},
      0.25 * P);
}

}  // namespace sheerlap

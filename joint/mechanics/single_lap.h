#pragma once

#include "joint/mechanics/single_lap_words.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// What of the laminates' turning strains the bond in shear.
enum class BondStrain {
  WithSlope,  ///< their faces' and the lap's own slope: equilibrium in full
  OfFaces     ///< their faces' alone, for published check values; too low
};

/// A single lap of two equal adherends that bend as well as stretch, for each mm of
/// width; of unequal ones the caller takes the thinner for both. Everything is > 0 but
/// nu; a gap of 0 has no stress.
template <class Number>
struct SingleLap {
  Number Ga;   ///< shear modulus of the adhesive, N/mm2
  Number Ea;   ///< modulus of the adhesive in peel, N/mm2
  Number eta;  ///< thickness of the bond, mm
  Number E;    ///< modulus of the laminate along the load, N/mm2
  Number t;    ///< thickness of the laminate, mm
  Number nu;   ///< Poisson's ratio of the laminate, 0 .. 0.5, no unit
  Number k_b;  ///< bending stiffness of the laminate over that of a plate of E, no unit
  Number l;    ///< length of the overlap, mm
  BondStrain strain = BondStrain::WithSlope;
};

/// How the adherends are held where they leave the overlap.
enum class EdgeMoment {
  Turning,  ///< long and free: the lap turns under load, which relieves the moment
  Held      ///< not free to turn: the whole eccentricity bends them, the safe end
};

/// What bends the adherends at the ends of the overlap.
template <class Number>
struct EdgeLoads {
  Number D;   ///< bending stiffness of the laminate, N mm
  Number xi;  ///< sqrt(P/D), 1/mm
  Number k;   ///< edge moment over the moment of the whole eccentricity, no unit
};

/// The terms of the shear stress: at the middle of a long lap it is C0, at its ends
/// g_end is the slope of the shear strain.
template <class Number>
struct LapShearTerms {
  Number om;     ///< how fast the shear falls from the ends, 1/mm
  Number C0;     ///< N/mm2
  Number g_end;  ///< 1/mm
};

/// The edge moment factor k, and what it stands on.
/// @param P  pull across the lap, N/mm; >= 0
/// @source   L. J. Hart-Smith, NASA CR-112236 (1973), from memory
template <class Working>
EdgeLoads<typename Working::Number> edge_loads(
    Working& work,
    const SingleLap<typename Working::Number>& lap,
    const typename Working::Number& P,
    EdgeMoment edge) {
  using Number = typename Working::Number;
  const Number D = work.figure(single_lap_words::D, lap.k_b * lap.E * power(lap.t, 3) /
                                                        (12 * (1 - power(lap.nu, 2))));
  const Number xi = work.figure(single_lap_words::xi, sqrt(P / D));
  if (edge == EdgeMoment::Held)
    return {D, xi, work.figure(single_lap_words::k_held, Number(1))};
  return {D, xi,
          work.figure(single_lap_words::k,
                      1 / (1 + xi * lap.l / 2 + power(xi * lap.l / 2, 2) / 6))};
}

/// The terms of the shear stress at a pull of P.
///
/// The lap's own slope makes the arm of the bond's strain that of its force, so that r
/// is squared in a.
/// @source  derived: equilibrium of the overlap, the shear acting at mid-bond
template <class Working>
LapShearTerms<typename Working::Number> lap_shear_terms(
    Working& work,
    const SingleLap<typename Working::Number>& lap,
    const typename Working::Number& P,
    const typename Working::Number& k) {
  using Number = typename Working::Number;
  const Number r = work.figure(single_lap_words::r, (lap.t + lap.eta) / lap.t);
  const Number bend = 3 * (1 - power(lap.nu, 2));
  const Number a = work.figure(single_lap_words::a, lap.strain == BondStrain::WithSlope
                                                        ? bend * power(r, 2) / lap.k_b
                                                        : bend * r / lap.k_b);
  const Number om = work.figure(single_lap_words::om,
                                sqrt(2 * lap.Ga / (lap.E * lap.t * lap.eta) * (1 + a)));
  const Number C0 =
      work.figure(single_lap_words::C0, a / (1 + a) * (1 - k) * P / lap.l);
  const Number g_end =
      work.figure(single_lap_words::g_end, P / (lap.E * lap.t * lap.eta) * (1 + a * k));
  return {om, C0, g_end};
}

/// The peak of the shear stress, tau_max, in an elastic adhesive.
///
/// Without the lap's own slope it would be 15 % less for 3 mm on 5 mm.
/// @param P  >= 0
template <class Working>
auto single_lap_shear(Working& work,
                      const SingleLap<typename Working::Number>& lap,
                      const typename Working::Number& P,
                      EdgeMoment edge) {
  const auto k = edge_loads(work, lap, P, edge).k;
  const auto terms = lap_shear_terms(work, lap, P, k);
  return work.figure(
      lap.strain == BondStrain::WithSlope ? single_lap_words::tau_max
                                          : single_lap_words::tau_faces,
      terms.C0 + lap.Ga / terms.om * terms.g_end * coth(terms.om * lap.l / 2));
}

/// The peak of the peel stress, sig_max, in an elastic adhesive.
///
/// A lip pulled away square to the lap, V_off, is an end load on a beam on an elastic
/// layer. The hull holds it beyond the far end of the overlap, by a shear of V_off and
/// a moment of V_off*l. Both ends sheared alike gives F_V. The moment adds
/// X*(1/F_M - F_M), which counts in short laps and soft adhesives: a rigid lip has
/// 4 V_off/l at its root, not V_off/l. Where it would relieve the root it is left out,
/// as the deck may take it. A lip that is pushed on opens at its tip instead, of which
/// this says nothing.
/// @param P      >= 0
/// @param V_off  >= 0, N/mm
/// @source  derived: beams on an elastic layer; V_off = 0 and a thin bond give the
///          form of Goland and Reissner (1944)
template <class Working>
auto single_lap_peel(Working& work,
                     const SingleLap<typename Working::Number>& lap,
                     const typename Working::Number& P,
                     const typename Working::Number& V_off,
                     EdgeMoment edge) {
  namespace words = single_lap_words;
  using Number = typename Working::Number;
  const auto [D, xi, k] = edge_loads(work, lap, P, edge);
  const Number M0 = work.figure(words::M0, k * P * (lap.t + lap.eta) / 2);
  const Number V0 = work.figure(words::V0, xi * M0);
  const Number chi = work.figure(words::chi, power(lap.Ea / (2 * D * lap.eta), 0.25));
  const Number X = work.figure(words::X, chi * lap.l / 2);
  const Number turn = work.figure(words::turn, sin(2 * X) * csch(2 * X));
  const Number F_M = work.figure(words::F_M, (1 - turn) / (1 + turn));
  const Number F_V =
      work.figure(words::F_V, (coth(2 * X) + cos(2 * X) * csch(2 * X)) / (1 + turn));
  if (value_of(V_off) == 0)
    return work.figure(words::sig_max, power(chi, 2) * M0 * F_M + chi * V0 * F_V);
  const Number F_off = work.figure(words::F_off, F_V + max(0, X * (1 / F_M - F_M)));
  return work.figure(words::sig_max,
                     power(chi, 2) * M0 * F_M + chi * V0 * F_V + chi * V_off * F_off);
}

}  // namespace sheerlap

#pragma once

#include "joint/mechanics/single_lap.h"

namespace sheerlap {

/// Two like beams on an elastic layer, with the same moment and shear at the edge of
/// each where it is loaded.
template <class Number>
struct PeelBeams {
  Number chi;  ///< how fast the peel falls from the ends, 1/mm
  Number M0;   ///< moment at the edges of the overlap, N mm/mm
  Number V0;   ///< shear there, N/mm
  Number l;    ///< length of the overlap, mm
};

/// The shear stress at a distance x from the middle of a single lap, tau_sx.
/// @param x  -l/2 .. l/2
/// @source   derived: equilibrium of the overlap, the shear acting at mid-bond
template <class Working>
auto lap_shear_at(Working& work,
                  const SingleLap<typename Working::Number>& lap,
                  const LapShearTerms<typename Working::Number>& terms,
                  const typename Working::Number& x) {
  const auto& om = terms.om;
  return work.figure(
      {"tau_sx", "shear stress at x from the middle of the lap", "N/mm2",
       single_lap_words::equilibrium, single_lap_words::elastic},
      terms.C0 + lap.Ga / om * terms.g_end *
                     (exp(om * (x - lap.l / 2)) + exp(-om * (x + lap.l / 2))) / 2 *
                     (1 + coth(om * lap.l / 2)));
}

/// The peel stress at a distance x from the middle of a single lap, sig_x.
///
/// The source's products of hyperbolic functions are divided by cosh(X)^2, so that long
/// overlaps stay within the numbers.
/// @param x  -l/2 .. l/2
/// @source   M. Goland and E. Reissner, J. Appl. Mech. 11 (1944) A-17: from memory, and
///           derived anew
template <class Working>
auto lap_peel_at(Working& work,
                 const PeelBeams<typename Working::Number>& beams,
                 const typename Working::Number& x) {
  using Number = typename Working::Number;
  namespace words = single_lap_words;
  const auto& [chi, M0, V0, l] = beams;
  const Number X = work.figure(words::X, chi * l / 2);
  const Number T = work.figure({"T_X", "tanh(X)", "1", words::layer, "any"}, tanh(X));
  const Number even =
      work.figure({"c_X", "cosh(chi*x)/cosh(X), in a form for long laps", "1",
                   words::layer, "x within the overlap"},
                  (exp(chi * x - X) + exp(-chi * x - X)) / 2 * (1 + T));
  const Number odd = work.figure({"s_X", "sinh(chi*x)/cosh(X), in a form for long laps",
                                  "1", words::layer, "x within the overlap"},
                                 (exp(chi * x - X) - exp(-chi * x - X)) / 2 * (1 + T));
  const Number level =
      work.figure({"A_X", "part of the peel that goes with cosh*cos", "N/mm2",
                   words::layer, words::elastic},
                  power(chi, 2) * M0 * (T * cos(X) - sin(X)) + chi * V0 * cos(X));
  const Number turned =
      work.figure({"B_X", "part of the peel that goes with sinh*sin", "N/mm2",
                   words::layer, words::elastic},
                  power(chi, 2) * M0 * (sin(X) + T * cos(X)) + chi * V0 * T * sin(X));
  return work.figure({"sig_x", "peel stress at x from the middle of the lap", "N/mm2",
                      words::layer, words::elastic},
                     (level * even * cos(chi * x) + turned * odd * sin(chi * x)) /
                         (T + sin(X) * cos(X) * power(sech(X), 2)));
}

}  // namespace sheerlap

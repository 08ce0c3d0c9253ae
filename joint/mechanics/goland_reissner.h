#pragma once

#include <cmath>

#include "joint/mechanics/single_lap.h"

namespace sheerlap {

/// The single lap of Goland and Reissner, of which the thickness of the bond does not
/// count in the eccentricity, nor Poisson's ratio in the stresses: what `single_lap.h`
/// comes to for a thin bond. For comparison.
///
/// Everything here is in the source's letters: c = l/2, p = P/t.
/// @source  M. Goland and E. Reissner, J. Appl. Mech. 11 (1944) A-17: from memory, and
///          derived anew

inline constexpr std::string_view goland_reissner_source =
    "M. Goland and E. Reissner, J. Appl. Mech. 11 (1944) A-17; from memory, confirm";
inline constexpr std::string_view goland_reissner_validity =
    "elastic; equal adherends, long and free to turn beyond the overlap; a bond that "
    "is "
    "thin, yet about 10 times as flexible as the laminates";

/// The edge moment factor: 1 without a load, 1/(1 + 2 sqrt(2)) for a long overlap or a
/// high load.
template <class Working>
auto goland_reissner_factor(Working& work,
                            const SingleLap<typename Working::Number>& lap,
                            const typename Working::Number& P) {
  const auto u2c = work.figure(
      {"u2c", "half the overlap in lengths of the adherends' bending", "1",
       goland_reissner_source, goland_reissner_validity},
      lap.l / (2 * lap.t) * sqrt(3 * (1 - power(lap.nu, 2)) / 2 * P / (lap.t * lap.E)));
  return work.figure({"k_GR", "edge moment factor for a thin bond", "1",
                      goland_reissner_source, goland_reissner_validity},
                     1 / (1 + 2 * std::sqrt(2.) * tanh(u2c)));
}

/// The peak of the shear stress for an edge moment factor k.
template <class Working>
auto goland_reissner_shear(Working& work,
                           const SingleLap<typename Working::Number>& lap,
                           const typename Working::Number& P,
                           const typename Working::Number& k) {
  const auto be = work.figure({"be", "how fast the shear falls from the ends", "1/mm",
                               goland_reissner_source, goland_reissner_validity},
                              sqrt(8 * lap.Ga / (lap.E * lap.t * lap.eta)));
  return work.figure(
      {"tau_GR", "peak shear stress for a thin bond", "N/mm2", goland_reissner_source,
       goland_reissner_validity},
      P / (4 * lap.l) *
          (be * lap.l / 2 * (1 + 3 * k) * coth(be * lap.l / 2) + 3 * (1 - k)));
}

/// The peak of the peel stress for an edge moment factor k.
template <class Working>
auto goland_reissner_peel(Working& work,
                          const SingleLap<typename Working::Number>& lap,
                          const typename Working::Number& P,
                          const typename Working::Number& k) {
  const auto ga =
      work.figure({"ga", "how fast the peel falls from the ends", "1/mm",
                   goland_reissner_source, goland_reissner_validity},
                  power(6 * lap.Ea / (lap.E * lap.eta * power(lap.t, 3)), 0.25));
  const auto xi_GR =
      work.figure({"xi_GR", "bending parameter of the laminate beyond the overlap",
                   "1/mm", goland_reissner_source, goland_reissner_validity},
                  sqrt(12 * (1 - power(lap.nu, 2)) * P / (lap.E * power(lap.t, 3))));
  const auto turn = work.figure({"f_GR", "sin(2L)/sinh(2L), L = ga*l/2", "1",
                                 goland_reissner_source, "0 for a long lap"},
                                sin(ga * lap.l) * csch(ga * lap.l));
  const auto M_GR = work.figure({"M_GR", "moment at the edge of the overlap", "N mm/mm",
                                 goland_reissner_source, goland_reissner_validity},
                                k * P * lap.t / 2);
  return work.figure(
      {"sig_GR", "peak peel stress for a thin bond", "N/mm2", goland_reissner_source,
       goland_reissner_validity},
      M_GR *
          (power(ga, 2) * (1 - turn) +
           ga * xi_GR * (coth(ga * lap.l) + cos(ga * lap.l) * csch(ga * lap.l))) /
          (1 + turn));
}

}  // namespace sheerlap

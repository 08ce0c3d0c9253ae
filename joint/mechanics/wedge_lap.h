#pragma once

#include "joint/mechanics/wedge_lap_words.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// An overlap whose bond is a wedge; otherwise as `ShearLap`. Everything is > 0.
///
/// To work each end as an even bond of its own gap is not safe: the bond beyond a thin
/// end gives more than the end does, and sheds its load onto it. Against a strip of
/// finite elements (tests) that estimate finds, at the thin end, for laminates of 6 and
/// 5 mm with overlaps of 40 and 50 mm:
///
///     gap, mm      stiff paste (Ga 370)   soft sealant (Ga 0.4)
///     2.1 to 3.9   89 .. 93 %             72 %
///     1 to 8       64 .. 75 %             30 %
///     0.5 to 5     71 .. 79 %             26 %
///
/// and too much at the thick end (107 .. 255 %). The functions here are not below the
/// strip anywhere, and above it by at most 4 % for the paste and by 11 % at the thin
/// end for the sealant.
template <class Number>
struct WedgeLap {
  Number Ga;     ///< shear modulus of the adhesive, N/mm2
  Number eta_1;  ///< thickness of the bond at x = -l/2, where adherend 2 ends, mm
  Number eta_2;  ///< at x = +l/2, where adherend 1 ends, mm; evenly in between
  Number E1t1;   ///< stiffness of adherend 1, modulus times thickness, N/mm
  Number E2t2;
  Number l;  ///< length of the overlap, mm
};

/// One end of a wedge and what its figures are called.
template <class Number>
struct WedgeEnd {
  Number eta;      ///< thickness of the bond here, mm
  Number eta_far;  ///< at the other end, mm
  Number carries;  ///< stiffness of the adherend that carries all here, N/mm
  Number ends;     ///< of the one that ends here, N/mm
  const WedgeEndWords& words;
};

/// The shear lag at the middling gap, the square of the mean of both gaps' roots.
template <class Working>
auto wedge_lag(Working& work,
               const WedgeLap<typename Working::Number>& lap,
               const WedgeWords& words) {
  return work.figure(words.lag, 2 * sqrt(lap.Ga * (1 / lap.E1t1 + 1 / lap.E2t2)) /
                                    (sqrt(lap.eta_1) + sqrt(lap.eta_2)));
}

/// The shear stress at an end of a wedge, or a little more.
///
/// A strain between the adherends at this end dies out along the overlap in the way
/// that stores least. The way of an even bond of this end's gap stores no less, which
/// bounds the slide here by coth(lam l)/lam and a term in the slope of the wedge; where
/// the bond grows thicker from here, so does an even bond of the middling gap. What the
/// far end adds is that of the middling gap: too much for a rigid lap, as the middling
/// gap is more than the logarithmic mean, and too much for a long one.
/// @param P  pull for each mm of the joint, N/mm; >= 0
/// @source   derived, as above; an even gap gives Volkersen's overlap itself
template <class Working>
auto wedge_end_shear(Working& work,
                     const WedgeLap<typename Working::Number>& lap,
                     const WedgeEnd<typename Working::Number>& end,
                     const typename Working::Number& P,
                     const WedgeWords& words) {
  using Number = typename Working::Number;
  const Number lam_c = wedge_lag(work, lap, words);
  const Number far = work.figure(words.far, csch(lam_c * lap.l) / lam_c);
  const Number lam = work.figure(
      end.words.lag, sqrt(lap.Ga / end.eta * (1 / lap.E1t1 + 1 / lap.E2t2)));
  const Number bound =
      (coth(lam * lap.l) + (end.eta_far - end.eta) / (4 * lam * lap.l * end.eta) *
                               (1 + power(lam * lap.l * csch(lam * lap.l), 2))) /
      lam;
  const bool thickens = value_of(end.eta_far) > value_of(end.eta);
  const Number own = work.figure(
      end.words.own, thickens ? min(bound, coth(lam_c * lap.l) / lam_c) : bound);
  return work.figure(end.words.stress,
                     P * lap.Ga / end.eta * (own / end.carries + far / end.ends));
}

/// The shear stress at x = -l/2, where adherend 2 ends.
template <class Working>
auto wedge_end_1_shear(Working& work,
                       const WedgeLap<typename Working::Number>& lap,
                       const typename Working::Number& P,
                       const WedgeWords& words = wedge_across) {
  return wedge_end_shear(
      work, lap, {lap.eta_1, lap.eta_2, lap.E1t1, lap.E2t2, words.end_1}, P, words);
}

/// The shear stress at x = +l/2, where adherend 1 ends.
template <class Working>
auto wedge_end_2_shear(Working& work,
                       const WedgeLap<typename Working::Number>& lap,
                       const typename Working::Number& P,
                       const WedgeWords& words = wedge_across) {
  return wedge_end_shear(
      work, lap, {lap.eta_2, lap.eta_1, lap.E2t2, lap.E1t1, words.end_2}, P, words);
}

/// The greater of both ends, tau_w.
template <class Working>
auto wedge_peak_shear(Working& work,
                      const WedgeLap<typename Working::Number>& lap,
                      const typename Working::Number& P,
                      const WedgeWords& words = wedge_across) {
  const auto tau_1 = wedge_end_1_shear(work, lap, P, words);
  const auto tau_2 = wedge_end_2_shear(work, lap, P, words);
  return work.figure(words.peak, max(tau_1, tau_2));
}

}  // namespace sheerlap

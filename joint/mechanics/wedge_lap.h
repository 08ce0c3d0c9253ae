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

/// The shear stress at an end of a wedge, or a little more.
/// @param P  pull for each mm of the joint, N/mm; >= 0
/// @source   derived, as above; an even gap gives Volkersen's overlap itself
template <class Working>
auto wedge_end_shear(Working& work,
                     const WedgeLap<typename Working::Number>& lap,
                     const WedgeEnd<typename Working::Number>& end,
                     const typename Working::Number& P,
                     const WedgeWords& words) {
  const auto K = work.figure(words.stiffness, lap.Ga * (1 / lap.E1t1 + 1 / lap.E2t2));
  const WedgeGap<typename Working::Number> gap = {K, end.eta, end.eta_far, lap.l};
  const auto far = wedge_far_slide(work, gap, words.slides);
  const auto own = wedge_own_slide(work, gap, words.slides, end.words);
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

#pragma once

#include "joint/mechanics/single_lap.h"
#include "joint/mechanics/wedge_single_lap_words.h"

namespace sheerlap {

/// A single lap whose bond is a wedge. Both gaps are > 0.
///
/// To work it with the even gap of its thin end is not safe. Against a strip of finite
/// elements (tests), for laminates of 5 mm with an overlap of 50 mm and gaps of 1 to
/// 8 mm, that finds 90 % of the shear and 94 % of the peel for a stiff paste (Ga 370),
/// and 30 % of the shear and 43 % of the peel of a lip pulled away for a soft sealant
/// (Ga 0.4). The functions here are not below the strip anywhere.
template <class Number>
struct WedgeSingleLap {
  SingleLap<Number> lap;  ///< its eta is the gap at the lip's root, where V_off pulls
  Number eta_tip;         ///< the gap at the lip's tip, mm
};

/// The thinner and the thicker of both gaps, mm.
template <class Number>
struct WedgeGaps {
  Number thin;
  Number thick;
};

template <class Working>
WedgeGaps<typename Working::Number> wedge_gaps(
    Working& work, const WedgeSingleLap<typename Working::Number>& wedge) {
  return {
      work.figure(wedge_single_lap_words::thin, min(wedge.lap.eta, wedge.eta_tip)),
      work.figure(wedge_single_lap_words::thick, max(wedge.lap.eta, wedge.eta_tip))};
}

/// The peak of the shear stress, at the thin end, tau_mw; or a little more.
///
/// The eccentricity is that of the thick end, also in what the lap's own slope adds to
/// the bond's strain. What the strains at the edges do is as in
/// `wedge_slides.h`; C0 grows as the slide of a bond that is thicker further in.
/// @param P  >= 0
template <class Working>
auto wedge_single_lap_shear(Working& work,
                            const WedgeSingleLap<typename Working::Number>& wedge,
                            const typename Working::Number& P,
                            EdgeMoment edge) {
  using Number = typename Working::Number;
  namespace words = wedge_single_lap_words;
  const auto& lap = wedge.lap;
  const auto [thin, thick] = wedge_gaps(work, wedge);
  const Number k = edge_loads(work, lap, P, edge).k;
  const Number a =
      work.figure(words::a, 3 * (1 - power(lap.nu, 2)) *
                                power((lap.t + thick) / lap.t, 2) / lap.k_b);
  const Number K = work.figure(words::K, 2 * lap.Ga / (lap.E * lap.t) * (1 + a));
  const WedgeGap<Number> gap = {K, thin, thick, lap.l};
  const Number far = wedge_far_slide(work, gap, words::slides);
  const Number own = wedge_own_slide(work, gap, words::slides, words::thin_end);
  const Number rise =
      work.figure(words::rise, (thick - thin) / (sqrt(K / thin) * lap.l * thin));
  const Number middling = power((sqrt(thin) + sqrt(thick)) / 2, 2) / thin;
  const Number C0 =
      work.figure(words::C0, a / (1 + a) * (1 - k) * P / lap.l *
                                 min(1 + rise * (1 + rise / 4), middling));
  return work.figure(words::thin_end.stress, C0 + lap.Ga / thin * P / (lap.E * lap.t) *
                                                      (1 + a * k) * (own + far));
}

}  // namespace sheerlap

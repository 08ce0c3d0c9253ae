#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// A bond that goes evenly from one gap to another, seen from one end. Everything is
/// > 0.
template <class Number>
struct WedgeGap {
  Number K;        ///< the square of the shear lag for a gap of 1 mm, 1/mm
  Number eta;      ///< thickness of the bond at this end, mm
  Number eta_far;  ///< at the other end, mm
  Number l;        ///< length of the overlap, mm
};

/// What the figures of a wedge are called that are the same from both ends. A slide is
/// how far the faces move on each other for a strain of 1 between the adherends.
struct WedgeSlideWords {
  FigureWords lag_middling;
  FigureWords far;
};

/// What the figures of one end of a wedge are called.
struct WedgeEndWords {
  FigureWords lag;
  FigureWords own;
  FigureWords stress;
};

/// The shear lag at the middling gap, whose root is the mean of both gaps' roots.
template <class Working>
auto wedge_middling_lag(Working& work,
                        const WedgeGap<typename Working::Number>& gap,
                        const WedgeSlideWords& words) {
  return work.figure(words.lag_middling,
                     2 * sqrt(gap.K) / (sqrt(gap.eta) + sqrt(gap.eta_far)));
}

/// The slide at one end for a strain of 1 at the other, mm; it is not below the truth.
///
/// That of an even bond of the middling gap: too much for a rigid lap, as the middling
/// gap is more than the logarithmic mean, and too much for a long one.
template <class Working>
auto wedge_far_slide(Working& work,
                     const WedgeGap<typename Working::Number>& gap,
                     const WedgeSlideWords& words) {
  const auto lam_c = wedge_middling_lag(work, gap, words);
  return work.figure(words.far, csch(lam_c * gap.l) / lam_c);
}

/// The slide at this end for a strain of 1 at it, mm; it is not below the truth.
///
/// The strain dies out along the overlap in the way that stores least. The way of an
/// even bond of this end's gap stores no less, which bounds the slide by coth(lam
/// l)/lam and a term in the slope of the wedge; where the bond grows thicker from here,
/// so does an even bond of the middling gap.
template <class Working>
auto wedge_own_slide(Working& work,
                     const WedgeGap<typename Working::Number>& gap,
                     const WedgeSlideWords& words,
                     const WedgeEndWords& end_words) {
  using Number = typename Working::Number;
  const Number lam_c = wedge_middling_lag(work, gap, words);
  const Number lam = work.figure(end_words.lag, sqrt(gap.K / gap.eta));
  const Number bound =
      (coth(lam * gap.l) + (gap.eta_far - gap.eta) / (4 * lam * gap.l * gap.eta) *
                               (1 + power(lam * gap.l * csch(lam * gap.l), 2))) /
      lam;
  if (value_of(gap.eta_far) <= value_of(gap.eta))
    return work.figure(end_words.own, bound);
  return work.figure(end_words.own, min(bound, coth(lam_c * gap.l) / lam_c));
}

}  // namespace sheerlap

#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// Two like beams on an elastic layer of an even thickness.
template <class Number>
struct PeelLayer {
  Number D;    ///< bending stiffness of each beam, N mm
  Number Ea;   ///< modulus of the layer in peel, N/mm2
  Number eta;  ///< its thickness, mm
  Number l;    ///< length of the overlap, mm
};

/// The peel at its edge for loads of 1.
template <class Number>
struct UnitPeel {
  Number X;       ///< half the overlap in lengths of the peel
  Number moment;  ///< for a moment of 1 N mm/mm at both edges, 1/mm2
  Number shear;   ///< for a shear of 1 N/mm at both edges, 1/mm
  Number off;     ///< for a pull of 1 N/mm at one edge, the other beam held, 1/mm
};

/// What its figures are called.
struct UnitPeelWords {
  FigureWords chi;
  FigureWords X;
  FigureWords turn;
  FigureWords moment;
  FigureWords shear;
  FigureWords off;
};

/// As in `single_lap_peel`, which says why.
template <class Working>
UnitPeel<typename Working::Number> unit_peel(
    Working& work,
    const PeelLayer<typename Working::Number>& layer,
    const UnitPeelWords& words) {
  using Number = typename Working::Number;
  const Number chi =
      work.figure(words.chi, power(layer.Ea / (2 * layer.D * layer.eta), 0.25));
  const Number X = work.figure(words.X, chi * layer.l / 2);
  const Number turn = work.figure(words.turn, sin(2 * X) * csch(2 * X));
  const Number moment =
      work.figure(words.moment, power(chi, 2) * (1 - turn) / (1 + turn));
  const Number shear = work.figure(
      words.shear, chi * (coth(2 * X) + cos(2 * X) * csch(2 * X)) / (1 + turn));
  const Number off = work.figure(
      words.off,
      shear + max(0, chi * X * ((1 + turn) / (1 - turn) - (1 - turn) / (1 + turn))));
  return {X, moment, shear, off};
}

}  // namespace sheerlap

#pragma once

#include <cstddef>

namespace sheerlap {

/// A finite-element strip of an overlap, one mm wide: an independent route to the
/// stresses that the formulas give. x runs from -l/2, where adherend 1 is loaded, to
/// +l/2, where adherend 2 is; the gap goes evenly from eta_1 to eta_2.

/// Two bars joined by an elastic layer in shear.
struct BarStrip {
  double Ga;              ///< shear modulus of the layer, N/mm2
  double eta_1, eta_2;    ///< its thickness at either end, mm
  double E1t1, E2t2;      ///< stiffness of the bars, N/mm
  double l;               ///< length of the overlap, mm
  double P;               ///< pull, N/mm
  double e1 = 0, e2 = 0;  ///< free thermal strains, no unit
};

/// Two like beams joined by a layer in shear and peel.
struct BeamStrip {
  double Ga, Ea;        ///< moduli of the layer, N/mm2
  double eta_1, eta_2;  ///< its thickness at either end, mm
  double Et;            ///< stiffness of each beam in its length, N/mm
  double D;             ///< in bending, N mm
  double l;             ///< length of the overlap, mm
  double force_arm;     ///< of the layer's shear force about a beam's middle, mm
  double strain_arm;    ///< of a beam's turning in the layer's shear strain, mm
  double P, M, V;       ///< pull, moment and shear on beam 2 at +l/2; beam 1 is clamped
                        ///< at -l/2. M and V > 0 open the layer
};

/// Stresses of the layer at the ends of the strip, N/mm2.
struct StripStresses {
  double tau_1 = 0, tau_2 = 0;  ///< shear at -l/2 and +l/2
  double sig_1 = 0, sig_2 = 0;  ///< peel; > 0 where the layer opens
};

/// @accuracy  second order in the length of an element
StripStresses strip_stresses(const BarStrip& strip, std::size_t elements);

/// @accuracy  peel: fourth order in the length of an element or better; shear: second
StripStresses strip_stresses(const BeamStrip& strip, std::size_t elements);

}  // namespace sheerlap

#pragma once

#include <numbers>
#include <vector>

#include "joint/reasons/working.h"

namespace sheerlap {

/// A long beam on an elastic layer: a lip on its cured bond or on its sealant.
template <class Number>
struct FoundationBeam {
  Number k_f;  ///< stiffness of the layer, N/mm for each mm of beam
  Number E;    ///< modulus of the beam, N/mm2
  Number I;    ///< its second moment, mm4
};

/// A load on a beam.
struct PointLoad {
  double P;   ///< N
  double at;  ///< mm
};

/// beta times the pitch at which the middle between two loads of a row lifts off: the
/// least root of tan(x/2) = -tanh(x/2).
inline constexpr double lift_off_root = 4.730040744862704;

/// The stiffness of the bond under the lip, k_f.
/// @param Ea   modulus of the adhesive, N/mm2
/// @param w    width of the bond, mm
/// @param eta  thickness of the bond, mm; > 0
template <class Working>
auto foundation_stiffness(Working& work,
                          const typename Working::Number& Ea,
                          const typename Working::Number& w,
                          const typename Working::Number& eta) {
  return work.figure({"k_f", "stiffness of the bond under the lip", "N/mm2",
                      "derived: a layer pressed without spreading sideways",
                      "linear; a thin wide layer of rubber is stiffer"},
                     Ea * w / eta);
}

/// How fast the beam's bends die out, beta, 1/mm.
template <class Working>
auto foundation_beta(Working& work,
                     const FoundationBeam<typename Working::Number>& beam) {
  return work.figure({"beta", "how fast bends of the lip die out", "1/mm",
                      "derived: E I y'''' + k_f y = 0",
                      "long slender beam, linear layer that can also pull"},
                     power(beam.k_f / (4 * beam.E * beam.I), 0.25));
}

/// How far one load presses the beam in where it stands, y_0, mm.
template <class Working>
auto single_load_deflection(Working& work,
                            const FoundationBeam<typename Working::Number>& beam,
                            const typename Working::Number& P) {
  const auto beta = foundation_beta(work, beam);
  return work.figure(
      {"y_0", "give under one load", "mm", "derived: E I y'''' + k_f y = 0, one load",
       "long slender beam, the next load over pi/beta away"},
      P * beta / (2 * beam.k_f));
}

/// The moment under one load, M_0, N mm.
template <class Working>
auto single_load_moment(Working& work,
                        const FoundationBeam<typename Working::Number>& beam,
                        const typename Working::Number& P) {
  const auto beta = foundation_beta(work, beam);
  return work.figure({"M_0", "moment under one load", "N mm",
                      "derived: E I y'''' + k_f y = 0, one load",
                      "long slender beam, the next load over pi/beta away"},
                     P / (4 * beta));
}

/// How far to either side one load presses, x_c, mm: beyond, the beam lifts.
template <class Working>
auto contact_half_length(Working& work,
                         const FoundationBeam<typename Working::Number>& beam) {
  const auto beta = foundation_beta(work, beam);
  return work.figure({"x_c", "reach of one load to either side", "mm",
                      "derived: cos(beta x) + sin(beta x) = 0 at beta x = 3 pi/4",
                      "long slender beam"},
                     3 * std::numbers::pi / 4 / beta);
}

/// How far the loads press the beam in at `x`, mm.
/// @source  derived: P beta/(2 k_f) exp(-u)(cos u + sin u), u = beta |x - at|, summed
double deflection(const FoundationBeam<double>& beam,
                  const std::vector<PointLoad>& loads,
                  double x);

/// The moment of the loads in the beam at `x`, N mm.
/// @source  derived: P/(4 beta) exp(-u)(cos u - sin u), summed
double moment(const FoundationBeam<double>& beam,
              const std::vector<PointLoad>& loads,
              double x);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "joint/mechanics/hull_section.h"

namespace sheerlap {

/// A closed wall under torsion.
template <class Number>
struct ClosedWall {
  Number T;        ///< torque, N mm
  Number Am;       ///< area inside the wall's mid-line, mm2
  Number G;        ///< shear modulus of the wall, N/mm2
  Number sum_dst;  ///< the wall's length over its thickness, summed round
};

/// The shape of a closed wall.
struct WallShape {
  double enclosed = 0;  ///< Am, mm2
  double sum_dst = 0;   ///< length over thickness times modulus ratio, summed round
};

/// The shape of the wall that the plates of a section make.
///
/// @param plates  in order round the section, each from where the one before it ends
/// @errors  InvalidInput: fewer than three plates; a plate without length, thickness or
///          modulus; a plate that does not start where the one before it ends
/// @source  derived: the area swept from the origin along each plate
Result<WallShape> wall_shape(const std::vector<SectionPlate>& plates);

/// The shear flow in a closed wall under torsion, q_T.
template <class Working>
auto torsion_flow(Working& work, const ClosedWall<typename Working::Number>& wall) {
  return work.figure(
      {"q_T", "shear flow along the joint from torsion", "N/mm",
       "Bredt; D. Johnson, Advanced Structural Mechanics (2000), page 80",
       "one closed cell, ends free to warp; a large opening in the deck breaks the "
       "cell"},
      wall.T / (2 * wall.Am));
}

/// How much a closed wall twists over its length, twist.
template <class Working>
auto torsion_twist(Working& work, const ClosedWall<typename Working::Number>& wall) {
  return work.figure(
      {"twist", "twist over the length", "rad/mm",
       "Bredt; D. Johnson, Advanced Structural Mechanics (2000), page 80",
       "one closed cell, ends free to warp; a large opening in the deck breaks the "
       "cell"},
      wall.T / (4 * power(wall.Am, 2) * wall.G) * wall.sum_dst);
}

}  // namespace sheerlap

#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// Two plates that one fastener holds in single shear.
template <class Number>
struct FastenedPlates {
  Number d;   ///< shank of the fastener, mm
  Number Ef;  ///< modulus of the fastener, N/mm2
  Number t1;  ///< thickness of plate 1, mm
  Number E1;  ///< modulus of plate 1 along the load, N/mm2
  Number t2;
  Number E2;
};

/// The constants of `huth_flexibility` for one kind of fastening.
/// @source  H. Huth, ASTM STP 927 (1986) 221-250; from memory, confirm
struct HuthFit {
  double a;  ///< power of thickness over diameter
  double b;
};
inline constexpr HuthFit bolted_metal{2. / 3, 3.0}, riveted_metal{2. / 5, 2.2},
    bolted_composite{2. / 3, 4.2};

/// How far the plates slide on each other for each N, C, mm/N.
///
/// The form that does not change when the plates are swapped; a print that tells plate
/// 1 from plate 2 in single shear has a misprint.
template <class Working>
auto huth_flexibility(Working& work,
                      const FastenedPlates<typename Working::Number>& joint,
                      const HuthFit& fit) {
  return work.figure(
      {"C", "flexibility of one fastener", "mm/N",
       "H. Huth, ASTM STP 927 (1986) 221-250; from memory, confirm",
       "single shear, a fitting hole; not measured on glass and polyester: uncertain "
       "by "
       "a factor of 2 or more"},
      power((joint.t1 + joint.t2) / (2 * joint.d), fit.a) * fit.b *
          (1 / (joint.t1 * joint.E1) + 1 / (joint.t2 * joint.E2) +
           1 / (2 * joint.t1 * joint.Ef) + 1 / (2 * joint.t2 * joint.Ef)));
}

/// The same by a formula for metal sheets: some way below `huth_flexibility`.
template <class Working>
auto swift_flexibility(Working& work,
                       const FastenedPlates<typename Working::Number>& joint) {
  return work.figure({"C_metal", "flexibility of one fastener in metal sheets", "mm/N",
                      "T. Swift, formula for fastened sheets; from memory, confirm",
                      "metal sheets in single shear; a stiff bound for laminates"},
                     5 / (joint.d * joint.Ef) +
                         0.8 * (1 / (joint.t1 * joint.E1) + 1 / (joint.t2 * joint.E2)));
}

}  // namespace sheerlap

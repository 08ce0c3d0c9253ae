#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// A flange that fasteners press on a sealant.
template <class Number>
struct SealedFlange {
  Number d;  ///< diameter of the fastener, mm
  Number t;  ///< thickness of the flange, mm
  Number m;  ///< gasket factor
};

/// Gasket factors: of a seal that the pressure itself presses, of an elastomer under 75
/// Shore A, and of a harder one.
/// @source  ASME Boiler and Pressure Vessel Code VIII-1, appendix 2, table 2-5.1; from
///          memory, confirm
inline constexpr double self_sealing = 0, soft_elastomer = 0.5, firm_elastomer = 1;

/// The widest pitch at which a flange seals, B_max, mm.
/// @source  TEMA Standards, RCB-11; from memory, confirm
template <class Working>
auto flange_pitch(Working& work, const SealedFlange<typename Working::Number>& flange) {
  return work.figure({"B_max", "widest pitch at which the flange seals", "mm",
                      "TEMA Standards, RCB-11; from memory, confirm",
                      "made for steel pipe flanges; for a lip bedded in sealant a low "
                      "figure, for a cured structural bond none"},
                     2 * flange.d + 6 * flange.t / (flange.m + 0.5));
}

/// What the load of fastener and flange grows by at a wider pitch, k_B.
/// @param B  pitch, mm, wider than 2 d + t
/// @source  ASME VIII-1, appendix 2; from memory, confirm
template <class Working>
auto wide_pitch_factor(Working& work,
                       const SealedFlange<typename Working::Number>& flange,
                       const typename Working::Number& B) {
  return work.figure(
      {"k_B", "growth of the fasteners' load at a wide pitch", "1",
       "ASME VIII-1, appendix 2; from memory, confirm", "steel pipe flanges"},
      sqrt(B / (2 * flange.d + flange.t)));
}

/// The closest pitch that leaves room for the tool, B_min, mm.
template <class Working>
auto closest_pitch(Working& work,
                   const SealedFlange<typename Working::Number>& flange) {
  return work.figure({"B_min", "closest pitch that leaves room for the tool", "mm",
                      "2.5 diameters, a bolting table's rule; from memory, confirm",
                      "spanner or socket on a hexagon head"},
                     2.5 * flange.d);
}

/// The pitch that keeps a joint bedded in sealant tight, s_w, mm: the least of three.
/// @param B_max   `flange_pitch`
/// @param s_F     `strength_pitch`
/// @param s_lift  `lift_off_pitch`
template <class Working>
auto sealing_pitch(Working& work,
                   const typename Working::Number& B_max,
                   const typename Working::Number& s_F,
                   const typename Working::Number& s_lift) {
  return work.figure(
      {"s_w", "pitch that keeps the joint tight", "mm",
       "derived: sealing, strength and lift-off all kept", "a joint bedded in sealant"},
      min(min(B_max, s_F), s_lift));
}

}  // namespace sheerlap

#pragma once

#include <numbers>

#include "joint/reasons/working.h"

namespace sheerlap {

/// One laminate at one hole: the hull's and the lip's are worked each by itself.
template <class Number>
struct HoleInLaminate {
  Number d;   ///< shank of the fastener, mm
  Number dh;  ///< hole, mm
  Number t;   ///< thickness of the laminate, mm
  Number e;   ///< from the hole's centre to the free edge, mm
  Number s;   ///< pitch along the joint, mm
};

/// A thread that holds in the laminate itself.
template <class Number>
struct ThreadInLaminate {
  Number d;   ///< over the thread, mm
  Number Le;  ///< length of thread in the laminate, mm
  Number fe;  ///< share of the thread's cylinder that takes part, 0 to 1
};

/// The share of a thread's cylinder that takes part, where nothing better is known.
/// @source  common practice, no source
inline constexpr double common_engagement = 0.5;

/// The relief of the stress at a hole: 0 for a ductile laminate, 1 for a brittle one.
/// Brittle is the safe end; 0.33 is a plausible figure for glass laminates. It must
/// come from a test.
/// @source  L. J. Hart-Smith, bolted joints in composites; from memory, confirm
inline constexpr double glass_relief = 0.33, brittle_relief = 1;

/// What the laminate carries before the shank crushes it, Pbr.
template <class Working>
auto bearing(Working& work,
             const HoleInLaminate<typename Working::Number>& hole,
             const typename Working::Number& sbr) {
  return work.figure(
      {"Pbr", "load at which the laminate crushes under the shank", "N",
       "derived: stress on the shank's projected area",
       "static, one row, the shank plain where it bears; a lap in single "
       "shear turns and may carry 10 to 30 % less"},
      hole.d * hole.t * sbr);
}

/// What the laminate carries before the piece between hole and edge shears out, Pso.
///
/// The safe form, on the two planes from the hole's sides; on 2 e t it would be more.
/// @param hole  e > dh/2
/// @param tau   in-plane shear strength, N/mm2
template <class Working>
auto shear_out(Working& work,
               const HoleInLaminate<typename Working::Number>& hole,
               const typename Working::Number& tau) {
  return work.figure({"Pso", "load at which the laminate shears out to its edge", "N",
                      "derived: shear on two planes from the hole's sides to the edge",
                      "static, load square to the edge"},
                     2 * (hole.e - hole.dh / 2) * hole.t * tau);
}

/// The width of laminate that one fastener can count on, w: the pitch, but no more than
/// six shanks.
/// @source  common practice, no source
template <class Working>
auto strip_width(Working& work, const HoleInLaminate<typename Working::Number>& hole) {
  return work.figure({"w", "width of laminate that works with one fastener", "mm",
                      "common practice, no source", "one row along the joint"},
                     min(hole.s, 6 * hole.d));
}

/// What the laminate carries before it tears across the hole, Pnt.
///
/// @param hole  dh < strip width; e > 0
/// @param sut   tensile strength, N/mm2
/// @param C     relief of the stress at the hole, see `glass_relief`
/// @source  L. J. Hart-Smith, bolted joints in composites; from memory, confirm
template <class Working>
auto net_tension(Working& work,
                 const HoleInLaminate<typename Working::Number>& hole,
                 const typename Working::Number& sut,
                 const typename Working::Number& C) {
  using Number = typename Working::Number;
  const Number w = strip_width(work, hole);
  const Number near_edge =
      value_of(hole.e) < value_of(w) ? 1.5 - 0.5 / (hole.e / w) : Number(1);
  const Number Th = work.figure(
      {"Th", "edge's part in the stress at the hole", "1",
       "L. J. Hart-Smith, bolted joints in composites; from memory, confirm",
       "1 where the edge is a strip's width away or more"},
      near_edge);
  const Number Kte = work.figure(
      {"Kte", "elastic peak of the stress at the hole over its mean", "1",
       "L. J. Hart-Smith, bolted joints in composites; from memory, confirm",
       "elastic, the same in all directions; hole smaller than the strip"},
      2 + (w / hole.dh - 1) - 1.5 * Th * (w / hole.dh - 1) / (w / hole.dh + 1));
  const Number Ktc = work.figure(
      {"Ktc", "peak of the stress over its mean at failure", "1",
       "L. J. Hart-Smith, bolted joints in composites; from memory, confirm",
       "C must come from a test; 1 is brittle, the safe end"},
      1 + C * (Kte - 1));
  return work.figure(
      {"Pnt", "load at which the laminate tears across the hole", "N",
       "L. J. Hart-Smith, bolted joints in composites; from memory, confirm",
       "static, one row, load square to the row"},
      (w - hole.dh) * hole.t * sut / Ktc);
}

/// What pulls the head, or the washer under it, through the laminate, Ppt.
/// @param Dh   outside diameter of head or washer, mm
/// @param t    thickness of the laminate, mm
/// @param til  interlaminar shear strength, N/mm2
template <class Working>
auto pull_through(Working& work,
                  const typename Working::Number& Dh,
                  const typename Working::Number& t,
                  const typename Working::Number& til) {
  return work.figure({"Ppt", "load that pulls the head through the laminate", "N",
                      "derived: interlaminar shear round the head's rim",
                      "static; a stiff head or washer that bears all round"},
                     std::numbers::pi * Dh * t * til);
}

/// What pulls the thread out of the laminate, Ppo.
/// @param til  interlaminar shear strength, N/mm2
template <class Working>
auto pull_out(Working& work,
              const ThreadInLaminate<typename Working::Number>& thread,
              const typename Working::Number& til) {
  return work.figure({"Ppo", "load that pulls the thread out of the laminate", "N",
                      "derived: shear on the thread's cylinder; the engagement is "
                      "common practice, no source",
                      "static; a pilot hole of the right size, not driven twice"},
                     std::numbers::pi * thread.d * thread.Le * til * thread.fe);
}

}  // namespace sheerlap

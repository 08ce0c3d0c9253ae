#pragma once

#include "joint/mechanics/unit_peel.h"
#include "joint/mechanics/wedge_single_lap.h"

namespace sheerlap {

/// The peel at the thin end of a wedge for loads of 1 on both edges, and on the root.
///
/// Each is the lesser of two: that of an even bond of the thin gap, raised for the
/// slope of the wedge by first-order perturbation and by 3.5 % for the higher orders
/// (so measured against a strip of finite elements); and that of an even bond of the
/// middling gap, whose opening is put on the thin one. A pull at the root has the first
/// only in laps of X > 2.2; where the root is the thick end it has that of its own gap.
/// @accuracy  not below the strip for gaps of 1 to 20 and X of 0.3 to 10; above it by
///            the 3.5 % for stiff adhesives, by half or more for soft ones
template <class Working>
UnitPeel<typename Working::Number> wedge_unit_peel(
    Working& work,
    const WedgeSingleLap<typename Working::Number>& wedge,
    const typename Working::Number& D) {
  using Number = typename Working::Number;
  namespace words = wedge_single_lap_words;
  const auto& lap = wedge.lap;
  const auto [thin, thick] = wedge_gaps(work, wedge);
  const Number mid =
      work.figure(words::middling, power((sqrt(thin) + sqrt(thick)) / 2, 2));
  const auto own = unit_peel(work, {D, lap.Ea, thin, lap.l}, words::thin_peel);
  const auto even = unit_peel(work, {D, lap.Ea, mid, lap.l}, words::middling_peel);
  const Number slope = work.figure(words::slope, (thick - thin) / (8 * own.X * thin));
  const Number moment =
      work.figure(words::moment,
                  min(1.035 * (1 + slope / 2) * own.moment, mid / thin * even.moment));
  const Number shear = work.figure(
      words::shear, min(1.035 * (1 + slope) * own.shear, mid / thin * even.shear));
  const Number raised = 1.035 * (1 + slope) * own.off, put = mid / thin * even.off;
  if (value_of(lap.eta) > value_of(wedge.eta_tip)) {
    const auto root = unit_peel(work, {D, lap.Ea, thick, lap.l}, words::root_peel);
    return {own.X, moment, shear, work.figure(words::off, root.off)};
  }
  return {own.X, moment, shear,
          work.figure(words::off, value_of(own.X) > 2.2 ? min(raised, put) : put)};
}

/// The peak of the peel stress of a wedge, sig_w; or a little more.
///
/// The eccentricity is that of the thick end. The parts are added, though their peaks
/// may stand at different ends.
/// @param P      >= 0
/// @param V_off  >= 0, N/mm; pulls the lip away at its root
template <class Working>
auto wedge_single_lap_peel(Working& work,
                           const WedgeSingleLap<typename Working::Number>& wedge,
                           const typename Working::Number& P,
                           const typename Working::Number& V_off,
                           EdgeMoment edge) {
  using Number = typename Working::Number;
  namespace words = wedge_single_lap_words;
  const auto [D, xi, k] = edge_loads(work, wedge.lap, P, edge);
  const Number thick = wedge_gaps(work, wedge).thick;
  const Number M0 = work.figure(words::M0, k * P * (wedge.lap.t + thick) / 2);
  const Number V0 = work.figure(words::V0, xi * M0);
  const auto peel = wedge_unit_peel(work, wedge, D);
  return work.figure(words::sig_w,
                     peel.moment * M0 + peel.shear * V0 + peel.off * V_off);
}

}  // namespace sheerlap

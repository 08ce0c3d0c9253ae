#pragma once

#include <numbers>

#include "joint/reasons/working.h"

namespace sheerlap {

/// A strip of paste between two faces that close on each other.
template <class Number>
struct Squeeze {
  Number mu;   ///< viscosity, Pa s
  Number w;    ///< width of the strip, mm
  Number eta;  ///< gap, mm
  Number V;    ///< closing speed, mm/s
};

/// A gap that closes under a constant force.
template <class Number>
struct Closing {
  Number mu;    ///< viscosity, Pa s
  Number f;     ///< force on each mm of the joint, N/mm; > 0
  Number eta0;  ///< gap at the start, mm
  Number eta1;  ///< gap at the end, mm; 0 < eta1 <= eta0
};

/// The force on each mm that closes a full strip, F_mu: paste squeezes out at both
/// edges.
///
/// From the pressure (6 mu V/eta^3)(w^2/4 - x^2) across the strip.
template <class Working>
auto squeeze_force(Working& work, const Squeeze<typename Working::Number>& strip) {
  return work.figure({"F_mu", "force to squeeze the paste out, by its viscosity",
                      "N/mm", "derived: flow between two faces, pressure a parabola",
                      "gap much less than the width, no gel yet; pastes that thin when "
                      "sheared take less"},
                     strip.mu / 1000 / 1000 * power(strip.w / strip.eta, 3) * strip.V);
}

/// The force on each mm while the paste is not yet at the edges, F_A.
/// @param A  section of the bead, mm2; the strip's width is not read
template <class Working>
auto spread_force(Working& work,
                  const Squeeze<typename Working::Number>& strip,
                  const typename Working::Number& A) {
  return work.figure(
      {"F_A", "force to spread the bead, by its viscosity", "N/mm",
       "derived: as for a full strip of width A/eta",
       "paste not yet at the edges, no gel yet"},
      strip.mu / 1000 / 1000 * power(A, 3) * strip.V / power(strip.eta, 6));
}

/// The seconds in which a full strip closes, t_w.
/// @param w  width of the strip, mm
template <class Working>
auto squeeze_time(Working& work,
                  const Closing<typename Working::Number>& closing,
                  const typename Working::Number& w) {
  return work.figure({"t_w", "time to squeeze the paste out", "s",
                      "derived: the speed under a constant force, summed over the gap",
                      "full width, paste without yield stress, no gel yet"},
                     closing.mu / 1000 / 1000 * power(w, 3) / (2 * closing.f) *
                         (1 / power(closing.eta1, 2) - 1 / power(closing.eta0, 2)));
}

/// The seconds in which a bead spreads, t_A.
/// @param A  section of the bead, mm2
template <class Working>
auto spread_time(Working& work,
                 const Closing<typename Working::Number>& closing,
                 const typename Working::Number& A) {
  return work.figure(
      {"t_A", "time to spread the bead", "s",
       "derived: the speed under a constant force, summed over the gap",
       "paste not yet at the edges and without yield stress, no gel yet"},
      closing.mu / 1000 / 1000 * power(A, 3) / (5 * closing.f) *
          (1 / power(closing.eta1, 5) - 1 / power(closing.eta0, 5)));
}

/// The force that closes a round blob of paste, F_disc, N.
///
/// It goes with the fourth power of the radius; a print with its square is no force.
/// @param disc  w is not read
/// @param R     radius, mm
template <class Working>
auto disc_force(Working& work,
                const Squeeze<typename Working::Number>& disc,
                const typename Working::Number& R) {
  return work.figure({"F_disc", "force to squeeze a round blob of paste", "N",
                      "derived: flow between two discs",
                      "gap much less than the radius, no yield stress, no gel yet"},
                     3 * std::numbers::pi * disc.mu / 1000 / 1000 * power(R, 4) *
                         disc.V / (2 * power(disc.eta, 3)));
}

/// The force of one clamp or fastener, F_clamp, N.
/// @param f  force on each mm of the joint, N/mm
/// @param s  pitch, mm
template <class Working>
auto clamp_force(Working& work,
                 const typename Working::Number& f,
                 const typename Working::Number& s) {
  return work.figure({"F_clamp", "force of each clamp", "N",
                      "derived: force on each mm times the pitch",
                      "a lip stiff enough to spread it, see the gap between clamps"},
                     f * s);
}

}  // namespace sheerlap

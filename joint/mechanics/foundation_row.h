#pragma once

#include "joint/mechanics/foundation_beam.h"

namespace sheerlap {

/// An endless row of equal loads on a beam on an elastic layer: the fasteners of a lip.
template <class Number>
struct LoadRow {
  FoundationBeam<Number> beam;
  Number P;  ///< each load, N
  Number s;  ///< pitch, mm; > 0
};

/// The pitch over the beam's own length, bs.
template <class Working>
auto row_pitch(Working& work, const LoadRow<typename Working::Number>& row) {
  const auto beta = foundation_beta(work, row.beam);
  return work.figure({"bs", "pitch over the length in which bends die out", "1",
                      "derived: beta times the pitch", "above 0"},
                     beta * row.s);
}

/// How far the beam gives at each load, y_at, mm.
///
/// (sinh x + sin x)/(cosh x - cos x) with exp(x)/2 taken out above and below.
template <class Working>
auto row_deflection_at(Working& work, const LoadRow<typename Working::Number>& row) {
  const auto bs = row_pitch(work, row);
  const auto y_0 = single_load_deflection(work, row.beam, row.P);
  return work.figure({"y_at", "give at each load of the row", "mm",
                      "derived: one load's give, summed over the endless row",
                      "long slender beam, linear layer that can also pull"},
                     y_0 * (1 - exp(-2 * bs) + 2 * exp(-bs) * sin(bs)) /
                         (1 + exp(-2 * bs) - 2 * exp(-bs) * cos(bs)));
}

/// How far the beam gives midway between loads, y_mid, mm; below 0 it lifts off.
///
/// 2 [sinh(x/2) cos(x/2) + cosh(x/2) sin(x/2)]/(cosh x - cos x) with exp(x)/2 taken out
/// above and below.
template <class Working>
auto row_deflection_between(Working& work,
                            const LoadRow<typename Working::Number>& row) {
  const auto bs = row_pitch(work, row);
  const auto y_0 = single_load_deflection(work, row.beam, row.P);
  return work.figure({"y_mid", "give midway between loads of the row", "mm",
                      "derived: one load's give, summed over the endless row",
                      "long slender beam, linear layer that can also pull"},
                     y_0 * 2 * exp(-bs / 2) *
                         ((1 - exp(-bs)) * cos(bs / 2) + (1 + exp(-bs)) * sin(bs / 2)) /
                         (1 + exp(-2 * bs) - 2 * exp(-bs) * cos(bs)));
}

/// The pitch beyond which the lip lifts off midway, s_lift, mm.
template <class Working>
auto lift_off_pitch(Working& work,
                    const FoundationBeam<typename Working::Number>& beam) {
  const auto beta = foundation_beta(work, beam);
  return work.figure({"s_lift", "pitch beyond which the lip lifts off midway", "mm",
                      "derived: y_mid = 0 at tan(bs/2) = -tanh(bs/2)",
                      "long slender lip, linear layer, an endless row"},
                     lift_off_root / beta);
}

}  // namespace sheerlap

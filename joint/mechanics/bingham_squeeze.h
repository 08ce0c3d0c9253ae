#pragma once

#include "joint/mechanics/squeeze.h"

namespace sheerlap {

/// The flow of a paste with a yield stress across a closing strip, without units: the
/// pressure's slope s over that at which the paste begins to move, and the distance
/// from the strip's middle over x_0.
namespace yield_flow {

/// Where in the strip the slope is `1 + excess`: s - 1.5 + 0.5/s^2, free of
/// cancellation.
double place(double excess);

/// The excess of the slope at `at` >= 0, the inverse of `place`.
double excess(double at);

/// The force on a strip whose edge is at `edge` > 0, over g_0 w^2/4.
/// @accuracy  1e-10
double force(double edge);

}  // namespace yield_flow

/// The force on each mm that closes a full strip of paste with a yield stress, F_B.
///
/// @param strip  V > 0, mu > 0
/// @param ty     yield stress, Pa; > 0
/// @accuracy  1e-10 of itself
/// @source  derived: Bingham flow between two faces,
///          V x = (g eta^3/(12 mu))(1 - 1.5 phi + 0.5 phi^3), phi = 2 ty/(g eta);
///          F = 2 int x g dx over half the width, with x as a function of g
template <class Working>
auto bingham_force(Working& work,
                   const Squeeze<typename Working::Number>& strip,
                   const typename Working::Number& ty) {
  const auto g_0 =
      work.figure({"g_0", "slope of the pressure at which the paste moves", "N/mm3",
                   "derived: yield stress on both faces", "no slip"},
                  2 * ty / 1000 / 1000 / strip.eta);
  const auto x_0 = work.figure({"x_0", "length that tells slow from fast closing", "mm",
                                "derived: yield stress over viscous stress", "no slip"},
                               ty * power(strip.eta, 2) / (6 * strip.mu * strip.V));
  const double edge = value_of(strip.w) / 2 / value_of(x_0);
  const auto S = work.solved(
      {"S", "slope of the pressure at the edge over g_0", "1",
       "derived: Bingham flow between two faces", "gap much less than the width"},
      1 + yield_flow::excess(edge), [&](const auto& root) {
        return Equation<Term>{x_0 * (root - 1.5 + 0.5 / power(root, 2)), strip.w / 2};
      });
  const double force = value_of(g_0) * value_of(strip.w) / 2 * value_of(strip.w) / 2 *
                       yield_flow::force(edge);
  return work.solved({"F_B", "force to squeeze the paste out", "N/mm",
                      "derived: pressure of Bingham flow, summed over the width",
                      "gap much less than the width, no slip, no gel yet; pastes that "
                      "thin when sheared take less"},
                     force, [&](const auto& root) {
                       const Term sum = power(S, 3) / 3 - 1.5 * power(S, 2) + 2.25 * S +
                                        log(S) + 1.5 / S - 1 / (12 * power(S, 3)) - 2.5;
                       return Equation<Term>{root, g_0 * (S * power(strip.w, 2) / 4 -
                                                          power(x_0, 2) * sum)};
                     });
}

}  // namespace sheerlap

#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// A deck panel under pressure.
template <class Number>
struct DeckPanel {
  Number p;  ///< pressure, kN/m2
  Number b;  ///< short span, mm
};

/// The load of a simply supported plate on the middle of its edges of length a, over
/// p b: c_V.
///
/// The part of the series that stays while tanh(alpha) goes to 1 is Catalan's constant;
/// the rest dies out as exp(-2 alpha).
/// @param aspect  a/b > 0; the edge is the long one if above 1
/// @param nu      Poisson's ratio
/// @accuracy  1e-12
/// @source    derived: Levy's series for the edge force V = Q + dM_xy/dx; 0.420 for a
///            square with nu = 0.3 is Timoshenko's, from memory, confirm
double levy_edge_factor(double aspect, double nu);

/// What holds each corner of the same plate down, over p b^2: c_R.
/// @accuracy  1e-11
/// @source    derived: Levy's series for R = 2 M_xy; Timoshenko's 0.065 for a square
///            with nu = 0.3 is from memory, confirm
double levy_corner_factor(double aspect, double nu);

/// The load of a wide strip of deck on the joint at its end, p_T.
template <class Working>
auto strip_reaction(Working& work, const DeckPanel<typename Working::Number>& deck) {
  return work.figure({"p_T", "load of the deck across the joint", "N/mm",
                      "derived: half the strip to either end",
                      "panel much longer than wide, both ends held alike"},
                     deck.p / 1000 * deck.b / 2);
}

/// The load of a rectangular panel on the middle of its long edge, p_T.
/// @param c_V  `levy_edge_factor`
template <class Working>
auto panel_reaction(Working& work,
                    const DeckPanel<typename Working::Number>& deck,
                    const typename Working::Number& c_V) {
  return work.figure({"p_T", "load of the deck across the joint", "N/mm",
                      "derived: series of a plate, after M. Levy",
                      "flat rectangular panel, simply supported all round"},
                     c_V * deck.p / 1000 * deck.b);
}

/// What holds each corner of the panel down, R.
/// @param c_R  `levy_corner_factor`
template <class Working>
auto corner_hold_down(Working& work,
                      const DeckPanel<typename Working::Number>& deck,
                      const typename Working::Number& c_R) {
  return work.figure({"R", "load that lifts a corner of the deck", "N",
                      "derived: series of a plate, after M. Levy",
                      "flat rectangular panel, simply supported all round"},
                     c_R * deck.p / 1000 * power(deck.b, 2));
}

/// The moment at the joint of a strip whose ends cannot turn, M_T.
template <class Working>
auto clamped_edge_moment(Working& work,
                         const DeckPanel<typename Working::Number>& deck) {
  return work.figure({"M_T", "moment of the deck on each mm of the joint", "N mm/mm",
                      "derived: strip with both ends clamped",
                      "ends that cannot turn; it pulls the bond open"},
                     deck.p / 1000 * power(deck.b, 2) / 12);
}

}  // namespace sheerlap

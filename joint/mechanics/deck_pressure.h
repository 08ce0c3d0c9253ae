#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

/// The waters a boat is meant for, A the ocean and D sheltered.
enum class DesignCategory { A, B, C, D };

/// The factor of a design category on pressures, kDC.
/// @source  ISO 12215-5:2008; 0.4 for D seen in a published sample, the others from
///          memory, confirm
double category_factor(DesignCategory category);

/// The least design pressure of a deck, kN/m2.
/// @source  ISO 12215-5:2008, as seen in a published sample
inline constexpr double least_deck_pressure = 5;

/// A motor boat and a panel of its deck.
template <class Number>
struct DeckDesign {
  Number LWL;   ///< length of the waterline, m
  Number mLDC;  ///< loaded displacement, kg
  Number b;     ///< short span of the panel, mm
  Number l;     ///< long span of the panel, mm
  Number kDC;   ///< `category_factor`
  Number kL;    ///< longitudinal factor, no more than 1
};

/// The base pressure of decks of motor boats, P_base, kN/m2.
/// @source  ISO 12215-5:2008; from memory, confirm. It gives a published sample's 16.0
///          at 4.00 m
template <class Working>
auto base_pressure(Working& work, const DeckDesign<typename Working::Number>& design) {
  return work.figure({"P_base", "base pressure of the deck", "kN/m2",
                      "ISO 12215-5:2008; from memory, confirm", "motor boats"},
                     0.35 * design.LWL + 14.6);
}

/// The reduction for the panel's area, kAR.
/// @param design  mLDC, b and l > 0; b < 5000
template <class Working>
auto area_factor(Working& work, const DeckDesign<typename Working::Number>& design) {
  const auto AD = work.figure(
      {"AD", "area of deck that counts", "m2", "ISO 12215-5:2008; from memory, confirm",
       "no more than 2.5 squares of the short span"},
      min(design.l * design.b, 2.5 * power(design.b, 2)) / 1000 / 1000);
  const auto kR = work.figure({"kR", "factor of the part's kind", "1",
                               "ISO 12215-5:2008; from memory, confirm", "deck panels"},
                              1.5 - 0.0003 * design.b);
  return work.figure({"kAR", "reduction for the panel's area", "1",
                      "ISO 12215-5:2008; from memory, confirm", "motor boats"},
                     kR * 0.1 * power(design.mLDC, 0.15) / power(AD, 0.3));
}

/// The design pressure of a deck panel, P_deck, kN/m2.
template <class Working>
auto deck_pressure(Working& work, const DeckDesign<typename Working::Number>& design) {
  const auto P_base = base_pressure(work, design);
  const auto kAR = area_factor(work, design);
  return work.figure({"P_deck", "design pressure of the deck", "kN/m2",
                      "ISO 12215-5:2008; from memory, confirm",
                      "motor boats; no less than 5; the edition of 2019 was not seen"},
                     max(P_base * kAR * design.kDC * design.kL, least_deck_pressure));
}

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/boat.h"
#include "joint/documents/number_style.h"

namespace sheerlap {

/// "read", "held" or "unread".
std::string word_of(Known known);

/// "tight", "wide", "step" or "no fastener".
std::string word_of(OutKind kind);

/// "grind", "build up", "longer fastener", "seat again", "read again" or "ask".
std::string word_of(Disposition disposition);

/// "NC3".
std::string name_of(const NonConformance& out);

/// How far it is out: below or over the limit.
Length out_by(const NonConformance& out);

/// Whose boat a report is about: "the boat of hull-12.csv, read held".
std::string boat_name(const Boat& boat);

/// What is out, where, and by how much, in a sentence.
std::string out_words(const NonConformance& out, const NumberStyle& style);

/// What the yard may do about it, in words, that which can be undone first: "seat the
/// lid in its best place (fit) and read again; grind off up to 0.40 mm; ...".
/// @param state  of the readings: a boat that is glued is no longer ground or shimmed
std::string disposition_words(const NonConformance& out,
                              ReadingState state,
                              const NumberStyle& style);

}  // namespace sheerlap

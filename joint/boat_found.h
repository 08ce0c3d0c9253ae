#pragma once

#include <string_view>

#include "joint/fit.h"
#include "joint/perimeter.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

inline constexpr std::string_view boat_validity =
    "gauge and tape as exact as they were read; the lid seated as it was then";

/// How the figures of a boat that have no formula are found.
inline constexpr FoundWords drawn_gap_words{
    {"g_drawn", "gap as drawn, at the place and edge", "mm", gap_source, gap_validity},
    "the normal of the drawn hull face followed to the lip face",
    "1e-9 mm"};
inline constexpr FoundWords place_girth_words{
    {"s", "girth on the drill line of a hole or row of the sheer table", "mm",
     "derived: the hole's girth in the layout; the row's by arc length",
     girth_validity},
    "the mark or label looked up",
    "1e-9 mm"};
inline constexpr FoundWords merged_words{
    {"c", "gap read less gap as drawn, of readings at one place", "mm",
     "derived: mean of the differences of all readings within 0.01 mm", boat_validity},
    "each reading less the drawn gap, added up and shared out",
    "as the readings"};
inline constexpr FoundWords middle_words{
    {"c", "difference on the centreline, where two sides meet without a corner", "mm",
     "derived: straight along the drill line from the nearest reading of one side to "
     "that of the other",
     boat_validity},
    "the two differences weighted by their distances",
    "as the readings"};
inline constexpr FoundWords held_words{
    {"s_held", "girth on the drill line from or to which a difference is held", "mm",
     "derived: the first and last reading of a side, and the side's ends",
     "beyond them nothing was read: the gap may be anything there"},
    "the readings of a side sorted by girth",
    "exact"};
inline constexpr FoundWords boat_gap_words{
    {"g", "gap of the boat", "mm", gap_source,
     "hull face moved to where it was read, straight along the girth between readings; "
     "beyond them by the nearest"},
    "the normal of the moved hull face followed to the lip face",
    "1e-6 mm for the readings given"};
inline constexpr FoundWords out_girth_words{
    {"s", "girth on the drill line of a stretch that is out, or of its worst", "mm",
     "derived: where the gap passes a limit; of holes and readings their own",
     boat_validity},
    "the gap looked at every 10 mm and at every knot, and bracketed where it passes",
    "1e-6 mm; a stretch shorter than 10 mm may be passed over"};
inline constexpr FoundWords out_depth_words{
    {"d", "depth of the worst gap, or of the edge", "mm",
     "derived: the hull's top edge, the lap's low edge, or between", boat_validity},
    "the least or greatest gap down the lap, by Brent's method",
    "1e-6 mm"};
inline constexpr FoundWords step_words{
    {"v", "difference of two neighbouring readings of an edge", "mm",
     "derived: the one less the other, without its sign", boat_validity},
    "both readings as the file has them",
    "as the readings"};
inline constexpr FoundWords needed_length_words{
    {"L_least", "least length that serves in the boat; of a rivet the grip", "mm",
     "derived: lip, gap and hull along the bit and what stands beyond", boat_validity},
    "the bit followed through lip and moved hull, as in the schedule",
    "1e-6 mm for the readings given"};
inline constexpr FoundWords boat_length_words{
    {"L", "length of the fastener, from stock", "mm",
     "derived: the shortest of fastener.lengths that serves the stack",
     "as drawn, and in the boat"},
    "the lengths in stock tried from the shortest",
    "exact: a length that is 1e-9 mm short serves"};
inline constexpr FoundWords bead_change_words{
    {"s_bead", "girth on the sheer where another bead than drawn begins or ends", "mm",
     "derived: the runs of the drawing laid over those of the boat", girth_validity},
    "the ends of the runs, as the adhesive has them",
    "1e-9 of a span"};
inline constexpr FoundWords drawn_mean_words{
    {"g_mean", "mean gap as drawn, over the bond band", "mm",
     "derived: by area of the hull face", gap_validity},
    "as the boat's own mean gap is worked, on the drawn faces",
    "about 1e-10 of itself"};
inline constexpr FoundWords drawn_volume_words{
    {"V_drawn", "volume as drawn", "ml", "derived: as the boat's own of the same name",
     "the drawn faces; where they interfere nothing is counted"},
    "as the boat's own is worked, on the drawn faces",
    "about 1e-10 of itself"};
inline constexpr FoundWords drawn_packs_words{
    {"n_drawn", "packs for one boat as drawn", "1", "derived: as the boat's own packs",
     "a fresh nozzle with every pack"},
    "as the boat's own are worked, on the drawn faces",
    "exact"};

}  // namespace sheerlap

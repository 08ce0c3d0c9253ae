#pragma once

#include "joint/reasons/working.h"

namespace sheerlap {

inline constexpr std::string_view seating_validity =
    "lid stiff, hull bent as a strip; gaps looked at every 10 mm and at every row, at "
    "both edges of the lap; the best near the lid as drawn";
inline constexpr std::string_view seating_source =
    "derived: a sequence of linear programmes in the lid's move, its turn, the squeeze "
    "and the margin, from the slopes of the true gaps";

/// How the figures of a seating are found.
inline constexpr FoundWords seated_aft_words{
    {"dx", "how far the lid moves aft", "mm", seating_source, seating_validity},
    "the move whose worst gap lies furthest inside the window",
    "the margin is within 1e-6 mm of the best; where several moves have it, the least "
    "move is taken"};
inline constexpr FoundWords seated_across_words{
    {"dy", "how far the lid moves to starboard", "mm", seating_source,
     seating_validity},
    "the move whose worst gap lies furthest inside the window",
    "the margin is within 1e-6 mm of the best; where several moves have it, the least "
    "move is taken"};
inline constexpr FoundWords seated_turn_words{
    {"turn", "turn of the lid about z, the stern to starboard", "degrees",
     seating_source, seating_validity},
    "the turn whose worst gap lies furthest inside the window",
    "the margin is within 1e-6 mm of the best; where several turns have it, the least "
    "is taken"};
inline constexpr FoundWords seated_squeeze_words{
    {"q", "squeeze of each side at the spreader", "mm", seating_source,
     seating_validity},
    "the squeeze whose worst gap lies furthest inside the window",
    "the margin is within 1e-6 mm of the best; force is used only where it gains"};
inline constexpr FoundWords seated_gap_words{
    {"g", "gap of the lid in its best place", "mm",
     "derived: along the moved hull face's outward normal to the moved lip face",
     seating_validity},
    "the true gap, measured again at the unknowns that were found",
    "1e-9 mm"};
inline constexpr FoundWords drawn_margin_words{
    {"m_drawn", "worst gap's distance inside the window, the lid as drawn", "mm",
     "derived: the least of gap - gap_min and gap_max - gap",
     "on the hull in its free shape, or as moulded without readings"},
    "the worst of the gaps every 10 mm and at every row, at both edges of the lap",
    "1e-9 mm at the places looked at"};
inline constexpr FoundWords gain_left_words{
    {"gain", "what a last linear programme promises beyond the margin", "mm",
     "derived: its optimum, proved by its dual, less the true margin",
     "moves of up to 0.1 mm from the seating"},
    "a linear programme about the seating found",
    "1e-9 mm"};
inline constexpr FoundWords gap_price_words{
    {"w", "margin gained for each mm that this gap alone is mended", "mm/mm",
     "derived: multiplier of the dual of the last linear programme", seating_validity},
    "the row's price in the optimum",
    "1e-9; those of all gaps add up to 1"};
inline constexpr FoundWords limit_price_words{
    {"w_limit", "margin gained for each mm that the spreader's limit was further",
     "mm/mm", "derived: multiplier of the dual of the last linear programme",
     seating_validity},
    "the price of the limit in the optimum; 0 for a spreader within it",
    "1e-9"};
inline constexpr FoundWords pivot_words{
    {"x_pivot", "x of the point that the lid turns about", "mm",
     "derived: half way between the sheer's foremost and aftermost point",
     "the point that a turn is counted from; any other does as well"},
    "half way between the ends, on the centreline",
    "1e-9 mm"};
inline constexpr FoundWords to_mould_words{
    {"q_mould", "squeeze that brings the hull there to its moulded shape", "mm",
     "derived: how far the free hull stands outward there",
     "the hull bent as a uniform strip through its readings, hinged at corners"},
    "the strip's shape at the spreader, the mean of both sides",
    "rounding, for the readings given"};
inline constexpr FoundWords seated_side_words{
    {"u_seated", "how far each side stands outward of its mould, seated", "mm",
     "derived: free, less the squeeze of all spreaders there",
     "the hull bent as a uniform strip through its readings and spreaders"},
    "the strip's shape at the reading, the mean of both sides",
    "rounding, for the readings given"};
inline constexpr FoundWords shape_least_words{
    {"g_least", "least gap in this shape of the hull", "mm",
     "derived: along the moved hull face's outward normal to the lip face",
     seating_validity},
    "the least of the gaps every 10 mm and at every row, at both edges of the lap",
    "1e-9 mm at the places looked at"};
inline constexpr FoundWords shape_greatest_words{
    {"g_greatest", "greatest gap in this shape of the hull", "mm",
     "derived: along the moved hull face's outward normal to the lip face",
     seating_validity},
    "the greatest of the gaps every 10 mm and at every row, at both edges of the lap",
    "1e-9 mm at the places looked at"};

inline constexpr std::string_view entry_validity =
    "hull as moulded and lid stiff; no sag, no sway on the lift";

/// How the figures of a way down are found.
inline constexpr FoundWords turned_clear_words{
    {"c_turned", "least clearance of a lid that is turned down", "mm",
     "derived: the level line outboard from the hull's top edge to the turned lip face",
     entry_validity},
    "the least at every row and every 25 mm, between angles by Brent's method",
    "1e-9 mm at the places looked at"};
inline constexpr FoundWords turned_low_words{
    {"c_low", "least clearance of the turned lip's low edge", "mm",
     "derived: the level line outboard from the hull's top edge to the lip's low edge",
     entry_validity},
    "the least at every row and every 25 mm, at the angle at which the edges pass, by "
    "bisection",
    "1e-9 mm at the places looked at"};
inline constexpr FoundWords turned_angle_words{
    {"a_turned", "the lid's angle to its seat there", "degrees",
     "derived: the angle of the least clearance", entry_validity},
    "Brent's method between angles; at the low edge bisection",
    "1e-6 of itself"};
inline constexpr FoundWords turned_height_words{
    {"d_turned", "how far down the lip's face the hull's top edge then is", "mm",
     "derived: the depth at which the level line meets the lip face", entry_validity},
    "the face met by Newton's method",
    "1e-9 mm"};
inline constexpr FoundWords entry_squeeze_words{
    {"q_entry", "how far each side must come in to let the lid pass", "mm",
     "derived: the greatest clash over the share of its way that is athwartships",
     entry_validity},
    "the greatest of all clashes; 0 where nothing clashes",
    "1e-9 mm at the places looked at"};
inline constexpr FoundWords lead_in_words{
    {"t_lead", "how far the lip's low edge would have to be led out, level", "mm",
     "derived: the greatest clash of the low edge", entry_validity},
    "the greatest clash of the low edge; 0 where it clears",
    "1e-9 mm at the places looked at"};

}  // namespace sheerlap

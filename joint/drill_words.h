#pragma once

#include <string_view>

#include "joint/reasons/reason.h"

namespace sheerlap {

inline constexpr std::string_view faces_validity = "faces as drawn, without tolerance";

/// How the figures of a drill station that the faces give are found.
inline constexpr FoundWords hole_x_words{
    {"x", "aft, where the bit enters the lip's outer face", "mm",
     "derived: the drill line at the hole's girth", faces_validity},
    "the point of the drill line at that girth",
    "1e-9 mm"};
inline constexpr FoundWords hole_y_words{
    {"y", "to starboard, where the bit enters", "mm",
     "derived: the drill line at the hole's girth", faces_validity},
    "the point of the drill line at that girth",
    "1e-9 mm"};
inline constexpr FoundWords hole_z_words{
    {"z", "up, where the bit enters", "mm",
     "derived: the drill line at the hole's girth", faces_validity},
    "the point of the drill line at that girth",
    "1e-9 mm"};
inline constexpr FoundWords hull_girth_words{
    {"s_hull", "girth on the hull face where the bit goes in", "mm",
     "derived: arc length of the hull line at the drill line's depth", faces_validity},
    "where the bit's line meets the hull face, by Newton's method, and the arc length "
    "to there",
    "1e-9 mm"};
inline constexpr FoundWords axis_words{
    {"a_x", "the bit's way aft for each mm it goes in", "1",
     "derived: square to the lip's outer face, inboard",
     "a bit held square to the lip"},
    "the face's normal where the bit enters, turned inboard",
    "1e-12"};
inline constexpr FoundWords low_edge_words{
    {"e_low_drawn", "from the hole to the lip's low edge", "mm",
     "derived: straight, to the nearest point of the edge", faces_validity},
    "the least distance to the edge, by Brent's method",
    "1e-9 mm"};
inline constexpr FoundWords top_edge_words{
    {"e_top_drawn", "from where the bit enters the hull to its top edge", "mm",
     "derived: straight, to the nearest point of the edge", faces_validity},
    "the least distance to the edge, by Brent's method",
    "1e-9 mm"};
inline constexpr FoundWords hole_gap_words{
    {"g", "gap where the bit enters the hull", "mm",
     "derived: along the hull face's normal to the lip face", faces_validity},
    "the normal followed to the lip face by Newton's method",
    "1e-9 mm"};
inline constexpr FoundWords to_gap_words{
    {"b_lip", "along the bit to the lip's inner face", "mm",
     "derived: where the bit's line meets the face", faces_validity},
    "the bit's line followed to the face by Newton's method",
    "1e-9 mm"};
inline constexpr FoundWords to_hull_words{
    {"b_hull", "along the bit to the hull's outer face", "mm",
     "derived: where the bit's line meets the face", faces_validity},
    "the bit's line followed to the face by Newton's method",
    "1e-9 mm"};
inline constexpr FoundWords through_words{
    {"b_through", "along the bit to the hull's inner face", "mm",
     "derived: where the bit's line meets the face", faces_validity},
    "the bit's line followed to the face by Newton's method",
    "1e-9 mm"};

inline constexpr FigureWords edge_low_words{
    "e_low", "from the hole to the lip's low edge at its worst trim", "mm",
    "derived: as drawn less the trim's tolerance", "hole on its mark"};
inline constexpr FigureWords edge_top_words{
    "e_top", "from the hole to the hull's top edge at its worst trim", "mm",
    "derived: as drawn less the trim's tolerance", "hole on its mark"};

}  // namespace sheerlap

#pragma once

#include <string_view>

#include "joint/reasons/reason.h"

/// What the figures of a lap that yields are called.
namespace sheerlap::plastic_lap_words {

inline constexpr std::string_view yielding =
    "derived: equilibrium of the overlap with yielded ends; the single lap of L. J. "
    "Hart-Smith, NASA CR-112236 (1973)";
inline constexpr std::string_view plastic =
    "shear alone, even bond: peel may part it long before, and a wedge its thin end; "
    "adhesive that yields at an even "
    "stress; the growth with thickness of the bond is not to be counted on";

inline constexpr FigureWords reach = {
    "b_p", "length that the strain at the ends asks for", "mm", yielding, plastic};
inline constexpr FigureWords s_p = {"s_p", "length that yields at each end", "mm",
                                    yielding, plastic};
inline constexpr FigureWords g_0 = {"g_0", "shear strain at the ends of the overlap",
                                    "1", yielding, plastic};
inline constexpr FigureWords P_y = {"P_y", "pull at which the ends of the bond yield",
                                    "N/mm", yielding, plastic};
inline constexpr FigureWords P_full = {
    "P_cap", "pull that the bond carries in shear, all of it yielding", "N/mm",
    "derived: yield stress over the whole overlap", plastic};
inline constexpr FigureWords P_cap = {"P_cap", "pull that the bond carries in shear",
                                      "N/mm", yielding, plastic};

}  // namespace sheerlap::plastic_lap_words

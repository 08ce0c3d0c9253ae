#pragma once

#include <string_view>

#include "joint/reasons/reason.h"

namespace sheerlap {

/// What the figures of one end of a wedge are called.
struct WedgeEndWords {
  FigureWords lag;
  FigureWords own;
  FigureWords stress;
};

/// What the figures of a wedge are called.
struct WedgeWords {
  FigureWords lag;
  FigureWords far;
  WedgeEndWords end_1;
  WedgeEndWords end_2;
  FigureWords peak;
};

inline constexpr std::string_view wedge_source =
    "derived: Volkersen's overlap (1938) with an upper bound on what a wedge yields, "
    "by "
    "the energy of the bond's shear";
inline constexpr std::string_view wedge_validity =
    "linear adhesive; gap that changes evenly from end to end; no bending, no peel; at "
    "most 4 % too high for stiff adhesives and 12 % at the thin end for soft ones, up "
    "to "
    "gaps of 1 to 10";

/// The words of one end from its letters.
consteval WedgeEndWords wedge_end_words(std::string_view lag,
                                        std::string_view own,
                                        std::string_view stress) {
  return {
      {lag, "shear lag at this end's own gap", "1/mm", wedge_source, wedge_validity},
      {own, "slide at this end for a strain of 1 between the adherends there", "mm",
       wedge_source, wedge_validity},
      {stress, "shear stress at this end of the wedge", "N/mm2", wedge_source,
       wedge_validity}};
}

/// For a load across the lap.
inline constexpr WedgeWords wedge_across = {
    {"lam_c", "shear lag at the wedge's middling gap", "1/mm", wedge_source,
     wedge_validity},
    {"d_far", "slide at one end for a strain of 1 between the adherends at the other",
     "mm", wedge_source, wedge_validity},
    wedge_end_words("lam_1", "d_1", "tau_w1"),
    wedge_end_words("lam_2", "d_2", "tau_w2"),
    {"tau_w", "peak shear stress across the lap, with its wedge", "N/mm2", wedge_source,
     wedge_validity}};

/// For a shear flow along the joint.
inline constexpr WedgeWords wedge_along = {
    {"lam_Lc", "shear lag at the wedge's middling gap", "1/mm", wedge_source,
     wedge_validity},
    {"d_Lfar", "slide at one edge for a strain of 1 between the laminates at the other",
     "mm", wedge_source, wedge_validity},
    wedge_end_words("lam_L1", "d_L1", "tau_Lw1"),
    wedge_end_words("lam_L2", "d_L2", "tau_Lw2"),
    {"tau_Lw", "peak shear stress along the joint, with its wedge", "N/mm2",
     wedge_source, wedge_validity}};

}  // namespace sheerlap

#pragma once

#include <string_view>

#include "joint/mechanics/wedge_slides.h"

namespace sheerlap {

/// What the figures of a wedge are called.
struct WedgeWords {
  FigureWords stiffness;
  WedgeSlideWords slides;
  WedgeEndWords end_1;
  WedgeEndWords end_2;
  FigureWords peak;
};

inline constexpr std::string_view wedge_source =
    "derived: Volkersen's overlap (1938), with an upper bound on how far a wedge "
    "gives, "
    "by the energy of the bond's shear";
inline constexpr std::string_view wedge_validity =
    "linear adhesive; gap that changes evenly from end to end; no bending, no peel; at "
    "most 4 % too high for stiff adhesives and 12 % at the thin end for soft ones, "
    "with "
    "gaps of 1 to 10";

/// The words of one end from its letters.
consteval WedgeEndWords wedge_end_words(std::string_view lag,
                                        std::string_view own,
                                        std::string_view stress) {
  return {
      {lag, "shear lag at this end's own gap", "1/mm", wedge_source, wedge_validity},
      {own, "slide at this end for a strain of 1 between the adherends here", "mm",
       wedge_source, wedge_validity},
      {stress, "shear stress at this end of the wedge", "N/mm2", wedge_source,
       wedge_validity}};
}

/// The words of the slides from their letters.
consteval WedgeSlideWords wedge_slide_words(std::string_view lag,
                                            std::string_view far) {
  return {{lag, "shear lag at the wedge's middling gap", "1/mm", wedge_source,
           wedge_validity},
          {far, "slide at one end for a strain of 1 between the adherends at the other",
           "mm", wedge_source, wedge_validity}};
}

/// For a load across the lap.
inline constexpr WedgeWords wedge_across = {
    {"K", "square of the shear lag for a gap of 1 mm", "1/mm", wedge_source,
     wedge_validity},
    wedge_slide_words("lam_c", "d_far"),
    wedge_end_words("lam_1", "d_1", "tau_w1"),
    wedge_end_words("lam_2", "d_2", "tau_w2"),
    {"tau_w", "peak shear stress across the lap, with its wedge", "N/mm2", wedge_source,
     wedge_validity}};

/// For a shear flow along the joint.
inline constexpr WedgeWords wedge_along = {
    {"K_L", "square of the shear lag for a gap of 1 mm", "1/mm", wedge_source,
     wedge_validity},
    wedge_slide_words("lam_Lc", "d_Lfar"),
    wedge_end_words("lam_L1", "d_L1", "tau_Lw1"),
    wedge_end_words("lam_L2", "d_L2", "tau_Lw2"),
    {"tau_Lw", "peak shear stress along the joint, with its wedge", "N/mm2",
     wedge_source, wedge_validity}};

}  // namespace sheerlap

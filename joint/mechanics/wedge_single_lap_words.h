#pragma once

#include <string_view>

#include "joint/mechanics/unit_peel.h"
#include "joint/mechanics/wedge_slides.h"

/// What the figures of a single lap are called whose bond is a wedge.
namespace sheerlap::wedge_single_lap_words {

inline constexpr std::string_view source =
    "derived: equilibrium of the overlap, with an upper bound on how far a wedge "
    "gives, "
    "by the energy of the bond's shear";
inline constexpr std::string_view validity =
    "elastic; equal adherends, long beyond the overlap; gap that changes evenly from "
    "root to tip; counts the lap's own slope in the bond's strain, at the thick end";
inline constexpr std::string_view peel_source =
    "derived: beams on an elastic layer of changing thickness, by perturbation; its "
    "margin measured against finite elements";
inline constexpr std::string_view peel_validity =
    "elastic; equal adherends, long beyond the overlap; gaps of 1 to 20; not too low; "
    "for soft adhesives up to half too high and more";

inline constexpr FigureWords thin = {"eta_n", "the thinner gap", "mm",
                                     "derived: lesser of root and tip", "any"};
inline constexpr FigureWords thick = {"eta_k", "the thicker gap", "mm",
                                      "derived: greater of root and tip", "any"};
inline constexpr FigureWords middling = {"eta_c", "middling gap", "mm",
                                         "derived: its root is the mean of both roots",
                                         "not less than the logarithmic mean"};
inline constexpr FigureWords a = {
    "a_w", "bending flexibility over stretching flexibility", "1", source, validity};
inline constexpr FigureWords K = {"K_w", "square of the shear lag for a gap of 1 mm",
                                  "1/mm", source, validity};
inline constexpr WedgeSlideWords slides = {
    {"om_c", "shear lag at the wedge's middling gap", "1/mm", source, validity},
    {"d_wfar", "slide at one end for a strain of 1 between the adherends at the other",
     "mm", source, validity}};
inline constexpr WedgeEndWords thin_end = {
    {"om_n", "shear lag at the thin end's gap", "1/mm", source, validity},
    {"d_w", "slide at the thin end for a strain of 1 between the adherends there", "mm",
     source, validity},
    {"tau_mw", "peak shear stress across the lap, with its wedge", "N/mm2", source,
     validity}};
inline constexpr FigureWords rise = {
    "s_w", "rise of the gap over a length of the shear", "1", source, validity};
inline constexpr FigureWords C0 = {
    "C_w", "even part of the shear stress, at the thin end", "N/mm2", source, validity};

/// The words of a layer of one gap from its letters.
struct LayerLetters {
  std::string_view chi, X, turn, moment, shear, off;
};
consteval UnitPeelWords layer_words(const LayerLetters& letters) {
  return {{letters.chi, "how fast the peel falls from the ends", "1/mm", peel_source,
           peel_validity},
          {letters.X, "half the overlap in lengths of the peel", "1", peel_source,
           peel_validity},
          {letters.turn, "sin(2X)/sinh(2X)", "1", peel_source, "0 for a long lap"},
          {letters.moment, "peel of an even bond for a moment of 1", "1/mm2",
           peel_source, peel_validity},
          {letters.shear, "peel of an even bond for a shear of 1", "1/mm", peel_source,
           peel_validity},
          {letters.off, "peel of an even bond for a pull of 1 at the root", "1/mm",
           peel_source, peel_validity}};
}
inline constexpr UnitPeelWords thin_peel =
    layer_words({"chi_n", "X_n", "f_n", "m_n", "v_n", "o_n"});
inline constexpr UnitPeelWords middling_peel =
    layer_words({"chi_c", "X_c", "f_c", "m_c", "v_c", "o_c"});
inline constexpr UnitPeelWords root_peel =
    layer_words({"chi_k", "X_k", "f_k", "m_k", "v_k", "o_k"});

inline constexpr FigureWords slope = {"p_w",
                                      "rise of the gap over a length of the peel", "1",
                                      peel_source, peel_validity};
inline constexpr FigureWords moment = {"m_w", "peel of the wedge for a moment of 1",
                                       "1/mm2", peel_source, peel_validity};
inline constexpr FigureWords shear = {"v_w", "peel of the wedge for a shear of 1",
                                      "1/mm", peel_source, peel_validity};
inline constexpr FigureWords off = {"o_w",
                                    "peel of the wedge for a pull of 1 at the root",
                                    "1/mm", peel_source, peel_validity};
inline constexpr FigureWords M0 = {"M_w", "moment at the edge of the overlap",
                                   "N mm/mm", source, validity};
inline constexpr FigureWords V0 = {"V_w", "shear at the edge of the overlap", "N/mm",
                                   "derived: beam under a pull", validity};
inline constexpr FigureWords sig_w = {"sig_w", "peak peel stress, with the wedge",
                                      "N/mm2", peel_source, peel_validity};

}  // namespace sheerlap::wedge_single_lap_words

#pragma once

#include <string_view>

#include "joint/reasons/reason.h"

/// What the figures of a single lap are called.
namespace sheerlap::single_lap_words {

inline constexpr std::string_view equilibrium =
    "derived: equilibrium of the overlap, the shear acting at the middle of the bond";
inline constexpr std::string_view layer =
    "derived: beams on an elastic layer; a thin bond gives the form of Goland and "
    "Reissner (1944)";
inline constexpr std::string_view elastic =
    "elastic; equal adherends, long beyond the overlap; even bond; leaves out the end "
    "where the stress falls to 0";

inline constexpr std::string_view elastic_slope =
    "elastic; equal adherends, long beyond the overlap; even bond; counts the lap's "
    "own "
    "slope in the bond's strain; leaves out the end where the stress falls to 0";

inline constexpr std::string_view elastic_shear =
    "elastic; equal adherends, long beyond the overlap; even bond; leaves out what the "
    "lap's own slope adds to the bond's strain, 15 % for a bond of 3 mm on laminates "
    "of "
    "5 mm";

inline constexpr FigureWords D = {"D", "bending stiffness of the laminate", "N mm",
                                  "derived: plate in bending",
                                  "k_b carries what the plies' order changes"};
inline constexpr FigureWords xi = {"xi",
                                   "bending parameter of the laminate beyond the "
                                   "overlap",
                                   "1/mm", "derived: beam under a pull",
                                   "a pull; long laminates"};
inline constexpr FigureWords k = {
    "k", "edge moment factor", "1",
    "L. J. Hart-Smith, NASA CR-112236 (1973); from memory, confirm",
    "both laminates long and free to turn; where they are held, k = 1"};
inline constexpr FigureWords k_held = {
    "k", "edge moment factor, edges held from turning", "1",
    "derived: the whole eccentricity bends the edge", "safe end: the greatest k"};
inline constexpr FigureWords r = {"r", "arm of the shear over half the laminate", "1",
                                  equilibrium, "counts the bond's own thickness"};
inline constexpr FigureWords a = {
    "a", "bending flexibility over stretching flexibility", "1", equilibrium, elastic};
inline constexpr FigureWords om = {"om", "how fast the shear falls from the ends",
                                   "1/mm", equilibrium, elastic};
inline constexpr FigureWords C0 = {"C0", "shear stress in the middle of a long lap",
                                   "N/mm2", equilibrium, elastic};
inline constexpr FigureWords g_end = {"g_end", "slope of the shear strain at the ends",
                                      "1/mm", equilibrium, elastic};
inline constexpr FigureWords tau_max = {"tau_max", "peak shear stress across the lap",
                                        "N/mm2", equilibrium, elastic_slope};
inline constexpr FigureWords tau_faces = {"tau_max", "peak shear stress across the lap",
                                          "N/mm2", equilibrium, elastic_shear};
inline constexpr FigureWords M0 = {"M0", "moment at the edge of the overlap", "N mm/mm",
                                   equilibrium, elastic};
inline constexpr FigureWords V0 = {"V0", "shear at the edge of the overlap", "N/mm",
                                   "derived: beam under a pull", elastic};
inline constexpr FigureWords chi = {"chi", "how fast the peel falls from the ends",
                                    "1/mm", layer, elastic};
inline constexpr FigureWords X = {"X", "half the overlap in lengths of the peel", "1",
                                  layer, elastic};
inline constexpr FigureWords turn = {"f_X", "sin(2X)/sinh(2X)", "1", layer,
                                     "0 for a long lap"};
inline constexpr FigureWords F_M = {"F_M",
                                    "effect of the lap's length on the moment's "
                                    "peel",
                                    "1", layer, "1 for a long lap"};
inline constexpr FigureWords F_V = {"F_V",
                                    "effect of the lap's length on the shear's "
                                    "peel",
                                    "1", layer, "1 for a long lap"};
inline constexpr FigureWords F_off = {
    "F_off", "effect of the lap's length on a pull square to it", "1",
    "derived: beams on an elastic layer, the lip loaded at its root and the hull held "
    "beyond the far end",
    "1 for a long lap; no moment from the deck"};
inline constexpr FigureWords sig_max = {"sig_max", "peak peel stress", "N/mm2", layer,
                                        elastic};

}  // namespace sheerlap::single_lap_words

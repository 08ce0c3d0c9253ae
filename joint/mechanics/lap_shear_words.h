#pragma once

#include <string_view>

#include "joint/reasons/reason.h"

namespace sheerlap {

/// What the figures of an overlap in shear are called. The same formulas serve a load
/// across the lap and a shear flow along it, and both may stand in one working.
struct ShearLapWords {
  FigureWords lag;
  FigureWords unbalance;
  FigureWords mean;
  FigureWords peak;
  FigureWords end_1;  ///< at x = -l/2, where adherend 2 ends
  FigureWords end_2;  ///< at x = +l/2, where adherend 1 ends
  FigureWords even;   ///< the part of the stress that is alike at both ends
  FigureWords odd;
  FigureWords at;  ///< at any x
};

inline constexpr std::string_view volkersen =
    "Volkersen 1938; agrees with the parameter of ESDU 80011 (1980)";
inline constexpr std::string_view volkersen_stress =
    "derived: Volkersen's overlap (1938) of unequal adherends, with a thermal term";
inline constexpr std::string_view stretched_adherends =
    "linear adhesive of even thickness; adherends that stretch and do not bend; leaves "
    "out peel";
inline constexpr std::string_view sheared_adherends =
    "linear adhesive of even thickness; laminates sheared in their own plane";

/// For a load across the lap.
inline constexpr ShearLapWords shear_across = {
    {"lam", "shear lag of the overlap", "1/mm", volkersen, stretched_adherends},
    {"Om", "unbalance of the adherends", "1", volkersen_stress, "any two adherends"},
    {"tau_avg", "mean shear stress across the lap", "N/mm2",
     "derived: load over length of the overlap",
     "says nothing of the peaks at the ends"},
    {"tau_max", "peak shear stress across the lap", "N/mm2", volkersen_stress,
     stretched_adherends},
    {"tau_1", "shear stress where adherend 2 ends", "N/mm2", volkersen_stress,
     stretched_adherends},
    {"tau_2", "shear stress where adherend 1 ends", "N/mm2", volkersen_stress,
     stretched_adherends},
    {"c_x", "cosh(lam*x)/sinh(lam*l/2), in a form for long laps", "1",
     "derived: hyperbolic functions as exponentials", "x within the overlap"},
    {"s_x", "sinh(lam*x)/cosh(lam*l/2), in a form for long laps", "1",
     "derived: hyperbolic functions as exponentials", "x within the overlap"},
    {"tau_x", "shear stress at x from the middle of the overlap", "N/mm2",
     volkersen_stress, stretched_adherends}};

/// For a shear flow along the joint: P is the flow q, l the width w of the bond, and
/// the moduli are the laminates' shear moduli.
inline constexpr ShearLapWords shear_along = {
    {"lam_L", "shear lag across the bond's width", "1/mm", volkersen,
     sheared_adherends},
    {"Om_L", "unbalance of the laminates in shear", "1", volkersen_stress,
     "any two laminates"},
    {"tau_Lavg", "mean shear stress along the joint", "N/mm2",
     "derived: shear flow over width of the bond",
     "says nothing of the peaks at the edges"},
    {"tau_L", "peak shear stress along the joint", "N/mm2", volkersen_stress,
     sheared_adherends},
    {"tau_L1", "shear stress along the joint, at the edge of laminate 2", "N/mm2",
     volkersen_stress, sheared_adherends},
    {"tau_L2", "shear stress along the joint, at the edge of laminate 1", "N/mm2",
     volkersen_stress, sheared_adherends},
    {"c_Lx", "cosh(lam_L*x)/sinh(lam_L*w/2), in a form for wide bonds", "1",
     "derived: hyperbolic functions as exponentials", "x within the bond"},
    {"s_Lx", "sinh(lam_L*x)/cosh(lam_L*w/2), in a form for wide bonds", "1",
     "derived: hyperbolic functions as exponentials", "x within the bond"},
    {"tau_Lx", "shear stress along the joint at x from the middle of the bond", "N/mm2",
     volkersen_stress, sheared_adherends}};

}  // namespace sheerlap

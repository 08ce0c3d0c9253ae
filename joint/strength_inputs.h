#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/mechanics/fastened_laminate.h"
#include "joint/mechanics/fastener_strength.h"
#include "joint/mechanics/hull_section.h"
#include "joint/stretch.h"

namespace sheerlap {

/// What a laminate is made of, as far as its strength goes; N/mm2.
struct LaminateStrength {
  std::optional<double> modulus;
  std::optional<double> shear_modulus;  ///< in its plane
  std::optional<double> poisson;        ///< no unit
  std::optional<double> tension;
  std::optional<double> compression;
  std::optional<double> shear;  ///< in its plane
  std::optional<double> interlaminar;
  std::optional<double> through;  ///< tension through the thickness
  std::optional<double> bearing;
  std::optional<double> bending_ratio;   ///< modulus in bending over that in tension
  std::optional<double> expansion;       ///< 1e-6 for each K
  std::optional<double> glass_fraction;  ///< by mass; for strengths that are not given
};

/// What the cured adhesive can carry, N/mm2, and how the wet one flows.
struct AdhesiveStrength {
  std::optional<double> modulus;
  std::optional<double> shear_modulus;
  std::optional<double> shear_strength;
  std::optional<double> peel_strength;
  std::optional<double> plastic_strain;  ///< shear strain beyond yield at failure
  std::optional<double> viscosity;       ///< Pa s
  std::optional<double> yield_stress;    ///< Pa, below which the paste does not flow
  std::optional<double> gasket_factor;   ///< of a sealant that makes the seal
};

/// What the fastener itself can carry.
struct FastenerStrength {
  std::optional<std::string> property_class;  ///< "A4-70"
  std::optional<double> tensile;              ///< N/mm2, in place of the class's
  std::optional<double> modulus;              ///< N/mm2
  std::optional<double> shear_capacity;       ///< N, in place of the shank's
  std::optional<double> pull_capacity;        ///< N, in place of the shank's
};

/// A load on each mm of the joint, N/mm.
struct JointLoad {
  double along = 0;   ///< shear flow along the joint
  double across = 0;  ///< up or down the lap
  double off = 0;     ///< square to the lap, pulling the lip away
};

/// More load on a stretch of the joint.
struct StretchLoad {
  Stretch stretch;
  JointLoad load;
  std::string what;
};

enum class LoadDirection { Along, Across, Off };

/// A force at a place, spread evenly over a length of the drill line about it.
struct PlaceLoad {
  SideChoice side = SideChoice::Both;
  Length at;  ///< running girth on the drill line, or x
  bool by_x = false;
  double force = 0;  ///< N
  LoadDirection direction = LoadDirection::Across;
  Length spread;
  std::string what;
};

/// Shear force and torque on the hull's cross-section, carried along the joint.
struct HullGirder {
  double shear_force = 0;            ///< N, vertical
  double torque = 0;                 ///< N mm
  std::vector<SectionPlate> plates;  ///< of the whole section, symmetric
};

/// The deck panel along the joint, whose edge the joint holds.
struct DeckLoad {
  Length span;                     ///< the short one
  std::optional<Length> length;    ///< the long one; a wide strip if left out
  std::optional<double> pressure;  ///< kN/m2; by the small-craft formula if left out
  std::optional<Length> waterline_length;
  std::optional<double> category_factor;  ///< kDC
  std::optional<double> displacement_kg;  ///< mLDC
  double longitudinal_factor = 1;         ///< kL
};

/// A deck warmer than the hull below it.
struct DeckWarmth {
  double kelvin = 0;  ///< how much warmer
  Length deck_width;  ///< of the strip of deck that pulls together
  Length hull_width;
};

/// Limit loads on the joint, N for each mm of it, and the factors asked for.
struct Loads {
  double along = 0;   ///< shear flow along the joint
  double across = 0;  ///< up or down the lap
  double off = 0;     ///< square to the lap, pulling the lip away
  double factor_bond = 1;
  double factor_fastener = 1;
  std::vector<StretchLoad> stretches = {};
  std::vector<PlaceLoad> points = {};
  std::optional<HullGirder> girder = {};
  std::optional<DeckLoad> panel = {};
  std::optional<DeckWarmth> warmth = {};
};

/// What the strength is worked by, beyond loads and materials.
struct StrengthRules {
  std::vector<std::string> rules;  ///< ids of published rules that are to be kept
  bool edges_held = false;         ///< the lip cannot turn at the overlap's end: k = 1
  double hole_brittleness = glass_relief;  ///< C of the stress concentration at a hole
  double thread_grip = common_engagement;  ///< share of the thread's surface that holds
  double wet = hot_wet_share;         ///< what is left of a laminate's bearing when wet
  std::optional<Length> gap_change;   ///< allowed between fasteners while wet
  double closing_speed = 1;           ///< mm/s, of the lip onto the wet paste
  std::optional<Length> hull_length;  ///< for rules by length
};

}  // namespace sheerlap

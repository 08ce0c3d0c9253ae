#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/bond_strength.h"
#include "joint/fasteners.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Closing the lip onto the wet adhesive, in the space between two holes that asks
/// most. None of a value where the joint file does not say what it needs.
struct Clamping {
  BondPoint place;                       ///< of the least gap within that space
  Length space;                          ///< between its two holes; 0 without one
  std::optional<double> flow_force;      ///< N/mm to close at the given speed, viscous
  std::optional<double> hold_force;      ///< N/mm below which the paste does not yield
  std::optional<double> line_force;      ///< N/mm in all
  std::optional<double> fastener_force;  ///< N for each fastener there
  std::optional<Length> bow;             ///< of the lip midway between fasteners
  std::optional<Length> pitch;           ///< the largest for the allowed change of gap
  std::optional<Length> even_pitch;  ///< cured: pi/beta, beyond which clamps act alone
  std::optional<Length> lift_pitch;  ///< cured: beyond which the lip lifts between them
  std::optional<Length> tight_pitch;  ///< of a gasketed flange, where a sealant seals
  std::vector<std::string> left_out;  ///< what could not be worked out, and why
};

/// The space that asks most is the one in which the lip bows most, its gap the least
/// within it; where nothing presses on a closed lip, the one that takes most force.
Clamping clamping(const Joint& joint,
                  const FastenerSpec& spec,
                  const BondStrength& bond,
                  const Layout& layout);

/// The place of the least gap.
BondPoint least_gap(const BondStrength& bond);

Explanations clamping_reasons(const Joint& joint,
                              const FastenerSpec& spec,
                              const Clamping& clamping);

/// The largest space at which the lip changes the gap of a place by no more than is
/// allowed while the paste is wet; none where the joint file does not say.
std::optional<Length> clamped_pitch(const Joint& joint, const BondPoint& place);

}  // namespace sheerlap

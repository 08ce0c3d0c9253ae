#pragma once

#include <optional>
#include <string>

#include "joint/bond_strength.h"
#include "joint/joint.h"
#include "joint/reasons/reason.h"
#include "joint/schedule.h"

namespace sheerlap {

/// How the whole bond and the fasteners share the load; information, no capacity. None
/// of a value where the joint file lacks a modulus.
struct LoadSharing {
  std::optional<double> flexibility;        ///< of a fastener, mm/N
  std::optional<double> metal_flexibility;  ///< by the formula for metal sheets
  std::optional<double> share;              ///< the fasteners', 0 to 1
  std::optional<double> metal_share;        ///< with that
  std::string says;  ///< in shop words: what that means for this joint
};

/// The share at the place of the least gap, at the largest space.
LoadSharing load_sharing(const Joint& joint,
                         const FastenerSpec& spec,
                         const BondPoint& place,
                         Length pitch);

Explanations load_sharing_reasons(const Joint& joint,
                                  const FastenerSpec& spec,
                                  const BondPoint& place,
                                  Length pitch);

}  // namespace sheerlap

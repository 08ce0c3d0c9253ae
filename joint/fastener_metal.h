#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/fastener_modes.h"
#include "joint/joint.h"

namespace sheerlap {

/// The tensile strength of the fastener's metal: the user's own, or that of its
/// property class; nothing where the joint file gives neither.
/// @errors  at "fastener.class": a class that is not known
Result<std::optional<MetalStrength>> metal_strength(const FastenerStrength& strength);

/// The modulus of the fastener's metal, likewise; N/mm2.
std::optional<double> metal_modulus(const FastenerStrength& strength);

/// The modes of a fastener that the joint file says too little for, in words.
std::vector<std::string> modes_left_out(const Joint& joint, const FastenerSpec& spec);

}  // namespace sheerlap

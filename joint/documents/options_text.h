#pragma once

#include <string>

#include "joint/candidates.h"
#include "joint/documents/number_style.h"
#include "joint/joint.h"

namespace sheerlap {

/// The fasteners and adhesives to choose from, side by side.
///
/// @param joint  whose candidates they are
std::string options_text(const Candidates& candidates,
                         const Joint& joint,
                         const NumberStyle& style);

}  // namespace sheerlap

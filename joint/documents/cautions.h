#pragma once

#include <string>
#include <vector>

namespace sheerlap {

/// What every report closes with: hazards of the work and what the figures are not.
/// One paragraph each.
const std::vector<std::string>& cautions();

}  // namespace sheerlap

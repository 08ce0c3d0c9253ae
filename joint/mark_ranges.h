#pragma once

#include <functional>
#include <string>
#include <vector>

#include "joint/drill_stations.h"

namespace sheerlap {

/// The marks of the stations that `listed` picks: "S04-S19, S23". Three or more
/// neighbours of one side are a range.
///
/// @param stations  side by side, by girth
std::string mark_ranges(const std::vector<DrillStation>& stations,
                        const std::function<bool(const DrillStation&)>& listed);

}  // namespace sheerlap

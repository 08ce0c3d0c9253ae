#pragma once

#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/reasons/reason.h"
#include "joint/schedule.h"

namespace sheerlap {

/// Why the figures of a drilling schedule are what they are, told of the hole through
/// the greatest stack, and of its jigs and its setting-out.
Explanations schedule_reasons(const Joint& joint,
                              const Perimeter& perimeter,
                              const Schedule& schedule);

/// The index of the station that the reasons are told of: with a station before it on
/// its side where there is one.
/// @param stations  at least one
std::size_t told_station(const std::vector<DrillStation>& stations);

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/layout.h"
#include "joint/layout_stretches.h"

namespace sheerlap {

/// What a hole is held by.
struct Hold {
  std::string because;  ///< in shop words
  std::string name;     ///< what holds it, to name a run by
};

/// What holds a hole at `girth`, if it is anything but its neighbours: a place, a
/// keep-out's edge, an end distance, a zone's edge, a step of the limits.
std::optional<Hold> hold_at(Length girth,
                            const SideObstacles& named,
                            const LayoutStretch& stretch);

/// The runs of one stretch's holes, and why each hole is where it is: one text a hole.
struct StretchReasons {
  std::vector<LayoutRun> runs;
  std::vector<std::string> because;
};

StretchReasons stretch_reasons(const Spacing& spacing,
                               const SideObstacles& named,
                               const LayoutStretch& stretch);

/// What stands in the way of the limits in a bridged space, in shop words.
std::string bridged_what(const BridgedSpace& bridged, const SideObstacles& named);

}  // namespace sheerlap

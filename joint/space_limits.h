#pragma once

#include <optional>
#include <string>

#include "joint/layout_stretches.h"

namespace sheerlap {

/// The limits of a space from one girth to another: those of all the ground it covers.
SpaceLimits limits_over(double from_mm, double to_mm, const SpacingProblem& problem);

/// The named limit that holds a space from one girth to another to its greatest size;
/// null if the joint file's own limits do.
const NamedLimit* limit_on(double from_mm, double to_mm, const LayoutStretch& stretch);

/// Whose limit a space comes up to: "the most the bow zone allows"; nothing if none.
std::optional<std::string> limit_words(double from_mm,
                                       double to_mm,
                                       const SideObstacles& named,
                                       const LayoutStretch& stretch);

/// The same of the named limits alone, for a space of which so much lies on the
/// stretch.
///
/// @param times  what the space is of the distance between the girths: 2 across a
///               mirrored end
std::optional<std::string> named_limit_words(double from_mm,
                                             double to_mm,
                                             double times,
                                             const LayoutStretch& stretch);

}  // namespace sheerlap

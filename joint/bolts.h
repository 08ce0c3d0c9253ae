#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/fasteners.h"

namespace sheerlap {

/// The sizes of bolts that are known here, metric first.
std::vector<std::string> bolt_sizes();

/// A bolt with its nut and a large washer under each, by its size: "M6", "#10" or
/// "1/4"; a countersunk one has no washer under its head.
///
/// @returns  nothing for a size that is not known, or not with that head
/// @source  ISO 261 and ISO 898-1 (thread), ISO 273 medium (holes), ISO 7093-1
///          (washers), ISO 4032 (nuts), ISO 7046-2 (countersunk head); inch: ASME B1.1,
///          clearance drills from a retyped table, the rest from memory
std::optional<FastenerSpec> bolt(const std::string& size, HeadKind head);

/// The area of a thread in tension (mm2).
/// @source  ISO 898-1: pi/4 (d - 0.9382 P)^2
double stress_area_mm2(Length diameter, Length pitch);

/// The least area of an ISO thread, at its root (mm2).
/// @source  ISO 68-1 profile: root diameter d - 1.22687 P; from memory, agrees with
///          published root areas to the printed digit
double root_area_mm2(Length diameter, Length pitch);

}  // namespace sheerlap

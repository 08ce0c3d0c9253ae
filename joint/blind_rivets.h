#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/fasteners.h"

namespace sheerlap {

/// The sizes of blind rivets that are known here, metric first.
std::vector<std::string> blind_rivet_sizes();

/// A blind rivet with a domed head, by its diameter: "4.8" (aluminium, open end) or
/// "3/16".
///
/// A length is that of the body, and of an inch size also the greatest grip of its
/// code, 3/8 in for a 46: `lengths` then holds those of the codes, `grips` those of
/// both.
///
/// @returns  nothing for a size that is not known
/// @source  ISO 15981:2002 (grips), US Army TM 10-5410-221-14, table 4-3 (inch)
std::optional<FastenerSpec> blind_rivet(const std::string& size);

}  // namespace sheerlap

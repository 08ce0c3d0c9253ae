#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/fasteners.h"

namespace sheerlap {

/// The sizes of tapping screws that are known here, metric first.
std::vector<std::string> tapping_screw_sizes();

/// A tapping screw by its size: "ST4.8", "#10" or "1/4"; "#14" is the quarter inch.
///
/// Its holes are those for thermoset plastics, the nearest to a laminate that is
/// published; where a table has none, `hull_pilot` and `lip_hole` stay empty or 0.
///
/// @returns  nothing for a size that is not known
/// @source  ISO 1478 (thread), ISO 7049 (pan head, lengths), ISO 7050 (countersunk
///          head), a fastener maker's hole tables; inch: types AB and B after ASME
///          B18.6.3, from supplier tables
std::optional<FastenerSpec> tapping_screw(const std::string& size, HeadKind head);

}  // namespace sheerlap

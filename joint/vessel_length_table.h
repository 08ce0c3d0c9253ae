#pragma once

#include <optional>

#include "geometry/quantity.h"

namespace sheerlap {

/// One row of the table, which is used whole: the spacing is for bolts of this
/// diameter.
struct VesselLengthRow {
  Length overlap;   ///< least
  Length diameter;  ///< of the bolts, least
  Length spacing;   ///< of the bolts
};

/// The deck-to-hull joint by the vessel's length, between two rows in proportion.
///
/// @returns  nothing for a vessel shorter than 30 ft or longer than 120 ft: the table
///           is not carried on
/// @source  from memory, confirm: a class society's rules for reinforced plastic
///          vessels (1978), deck-to-hull joint; the inch columns, which are linear. Its
///          millimetre columns are remembered as rounded and are not used.
std::optional<VesselLengthRow> vessel_length_row(Length vessel);

}  // namespace sheerlap

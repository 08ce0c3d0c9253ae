#pragma once

#include <optional>

#include "geometry/quantity.h"
#include "joint/perimeter.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// The least clearance on a way down, and what would mend it.
struct EntryClearance {
  Length worst;   ///< level, square to the sheer in plan; negative: a clash
  Length height;  ///< how far down the lip's face the hull's top edge then is
  Angle angle;    ///< of the lid to its seat there; 0 on a lid that comes straight down
  SideName side = SideName::Starboard;
  Length girth;  ///< along the sheer
};

/// The lid on a way down.
struct EntryPath {
  /// The lip's low edge as it passes the hull's top edge. A lid that turns is over the
  /// edge already, as the turning begins, near the end it turns on.
  std::optional<EntryClearance> low_edge;
  /// The same, and then the lip's inner face down to its seat.
  EntryClearance face;
  /// How far each side must be squeezed in, athwartships, to let it pass: 0 where
  /// nothing clashes, nothing where it clashes on what no squeeze moves, the bow or the
  /// transom.
  std::optional<Length> squeeze;
  /// How far the lip's low edge would have to be led out, level.
  Length lead_in;
};

/// The lid coming straight down: the hull's top edge is as far down the lip's face as
/// the lid is above its seat. Offsets run linearly from knot to knot, so the worst
/// place is a knot, or where an opening ends.
EntryPath straight_entry(const Perimeter& perimeter);

/// The lid coming down by turning.
///
/// One end is home first. The lid turns about a level axis athwartships through that
/// end of the sheer, at its seated height, from `entry.angle` to its seat; the bow
/// first, its stern comes down last, and the other way round. As it turns it also
/// moves a little fore and aft, and stands a little longer or shorter.
///
/// Looked at every 25 mm along the joint and at every row, and between in angle by
/// Brent's method; where the level line from the hull's edge misses the lip face there
/// is no clearance to speak of, and the angle is passed over.
EntryPath turned_entry(const Perimeter& perimeter, const TurnedEntry& entry);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/layout_stretches.h"

namespace sheerlap {

/// What lies beside a hole on one hand, and what the space to it may be.
struct HoleSpace {
  std::string to;       ///< "S15", or what ends the stretch: "the transom corner"
  bool to_hole = true;  ///< else an end distance
  Length space;         ///< girth on the drill line; between two sides, along both
  Length least;
  Length greatest;    ///< `unlimited_pitch` where there is no most
  std::string whose;  ///< the greatest is, in shop words; empty: the joint file's

  /// Within what rounding leaves.
  bool over() const;
  bool under() const;
};

/// The spaces on either hand of a hole.
struct HoleSpaces {
  HoleSpace before;  ///< towards the side's start
  HoleSpace after;   ///< towards its end
};

/// The spaces of one of the stations, wherever on its stretch it stands between its
/// neighbours.
///
/// Across a centreline the space goes on to the nearest hole of the other hand; where
/// that hand has none, to this hole's own mirror image.
///
/// @param stations  of the whole schedule
/// @param stretch   of the hole's side, the hole and those beside it on it
HoleSpaces hole_spaces(const Perimeter& perimeter,
                       const std::vector<DrillStation>& stations,
                       std::size_t hole,
                       const LayoutStretch& stretch);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <vector>

#include "geometry/flat_strip.h"
#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A hole of a flat pattern.
struct FlatHole {
  std::size_t station = 0;  ///< index into the stations
  Point2 at;                ///< mm
  Length flat;              ///< along the flat drill line from the pattern's first hole
};

/// The lip's outer face on a stretch of a side, laid flat: a flexible strip cut to it
/// lies right on the boat.
///
/// Seen from outside the boat, the sheer's edge up, the first hole at the origin and
/// the last level with it: starboard and the transom run to the left, port to the
/// right. Seen from the lip's side it is mirrored.
struct FlatPattern {
  SideName side = SideName::Starboard;
  PlateSide seen_from = PlateSide::Outer;
  std::vector<Point2> drill_line;  ///< by girth, mm
  std::vector<Point2> top;         ///< the edge at the sheer, by girth
  std::vector<Point2> low;         ///< the lip's low edge, by girth
  std::vector<FlatHole> holes;
  Length
      longer;  ///< flat less girth from the first hole to the last: the plate's share
  FlatDistortion distortion;  ///< over the whole stretch
  double fibre_strain = 0;    ///< of the plate's own faces once bent, the greatest
  /// The plate is thicker than a hollow lets it bend into: the pattern is of no use.
  bool too_thick = false;

  /// Whether the way aft, or to port on the transom, is to the left.
  bool runs_left() const;
};

/// A stretch of a side to lay flat.
struct FlatStretch {
  std::size_t first = 0;  ///< the stations of it, of one side
  std::size_t last = 0;
  Length from;  ///< girths on the drill line, holding the stations between them
  Length to;
};

/// The flat pattern of a stretch.
///
/// @param sheet  thickness of the strip and the side it is seen from
FlatPattern flat_pattern(const Perimeter& perimeter,
                         const std::vector<DrillStation>& stations,
                         const FlatStretch& stretch,
                         const JigRules& sheet);

/// The stretch of a jig: to a bush's diameter beyond its outer holes, no further than
/// the corner, opening or end of the side there.
FlatStretch jig_stretch(const Perimeter& perimeter,
                        const std::vector<DrillStation>& stations,
                        std::size_t first,
                        std::size_t last,
                        const JigRules& rules);

/// The stretches of a side that a strip can lie on in one: from end to end, parted at
/// corners and openings; those without a hole left out.
std::vector<FlatStretch> strip_stretches(const PerimeterSide& side,
                                         const std::vector<DrillStation>& stations);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/drill_stations.h"
#include "joint/jigs.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A dimension to check the setting-out by.
struct CheckLine {
  SideName side = SideName::Starboard;
  std::string what;
  std::string from;  ///< a mark, or a point of the joint in shop words
  std::string to;
  Length value;
  std::string measured;  ///< "girth on the drill line" or "straight"
};

/// The dimensions that prove a setting-out, side by side.
///
/// For each side: its length and the space that closes it (with the pitches they sum to
/// the length); every fifth running dimension and the straight line from the fifth hole
/// before, where no corner or opening parts them; the first and the last hole from each
/// corner and opening; the straight line from the bow datum to its after end. For each
/// jig the straight line from end to end and the greatest distance of the drill line
/// from it. For starboard and port together a pair of diagonals, between holes that
/// mirror each other where there are such.
///
/// @param stations  of the perimeter, side by side, by girth
/// @param jigs      of the stations
std::vector<CheckLine> check_lines(const Perimeter& perimeter,
                                   const std::vector<DrillStation>& stations,
                                   const std::vector<JigSegment>& jigs);

}  // namespace sheerlap

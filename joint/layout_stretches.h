#pragma once

#include <string>
#include <vector>

#include "geometry/spacing.h"
#include "joint/joint.h"
#include "joint/keepout_obstacles.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A hole that must be, and why.
struct NamedPlace {
  Length at;
  std::string what;
};

/// A stretch with limits of its own.
struct NamedZone {
  Length from;
  Length to;
  std::string what;
};

/// What stands on one side.
struct SideObstacles {
  std::vector<Obstacle> obstacles;
  std::vector<NamedPlace> places;
  std::vector<NamedZone> zones;
};

/// A part of a stretch on which a limit is tighter than the joint file's own.
struct NamedLimit {
  SpaceZone zone;       ///< with the least space of the joint file
  double asked_mm = 0;  ///< the greatest space asked for
  std::string whose;    ///< in shop words, behind "allowed by"

  /// Whether the least space there is larger than what is asked for.
  bool gave_way() const { return asked_mm < zone.limits.greatest_mm; }
};

/// A stretch of a side between ends, corners and openings: what is to be spaced out,
/// and the words for it.
struct LayoutStretch {
  std::string start_name;  ///< "the bow centreline", "the transom corner" ...
  std::string end_name;
  SpacingProblem problem;               ///< its last zones are those of `limits`
  std::vector<NamedLimit> limits = {};  ///< by girth, disjoint

  /// How many of the problem's zones, from the first, are the joint file's.
  std::size_t own_zones() const { return problem.zones.size() - limits.size(); }
};

struct LayoutGround {
  SideObstacles named;
  std::vector<LayoutStretch> stretches;  ///< by girth
};

/// The ground on which the holes of one side are laid out.
///
/// A keep-out's clearance that runs past the end of its side goes on on the next one.
///
/// @errors  InvalidInput at "keepout[N]...", "zone[N]...", "place[N]...": off the side,
///          on a side the joint has not, a place inside an opening or a keep-out, zone
///          limits that cross
Result<LayoutGround> layout_ground(const Joint& joint,
                                   const Perimeter& perimeter,
                                   const PerimeterSide& side);

}  // namespace sheerlap

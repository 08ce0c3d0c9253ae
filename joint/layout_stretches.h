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

/// A stretch of a side between ends, corners and openings: what is to be spaced out,
/// and the words for it.
struct LayoutStretch {
  std::string start_name;  ///< "the bow centreline", "the transom corner" ...
  std::string end_name;
  SpacingProblem problem;
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

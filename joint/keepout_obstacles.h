#pragma once

#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What keeps holes away, on one side's drill line.
struct Obstacle {
  Length from;  ///< its clearance included
  Length to;
  Length clear;  ///< the clearance in it
  std::string what;
  bool bend = false;  ///< follows from the least radius, not from the joint file's list
};

/// The keep-outs that stand on a side, and what the clearance of those next to its ends
/// leaves free of holes on it.
///
/// @errors  InvalidInput at "keepout[N]...": one that does not lie on the side
Result<std::vector<Obstacle>> keepout_obstacles(const Joint& joint,
                                                const Perimeter& perimeter,
                                                const PerimeterSide& side);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/joint.h"

namespace sheerlap {

/// A size of fastener that the tables here have.
struct FastenerSize {
  std::string size;              ///< as a joint file names it: "ST4.8", "M6", "3/16"
  std::string what;              ///< "tapping screw ST4.8, 4.8 mm over the thread"
  Length diameter;               ///< over the thread at its greatest; a rivet's nominal
  std::vector<HeadKind> heads;   ///< the heads the tables have, pan first
  bool needs_own_holes = false;  ///< no table here has its holes: the user gives them
};

/// The sizes of one kind of fastener, metric first, each ascending.
/// @source  each size's own: `FastenerSpec::values`
std::vector<FastenerSize> fastener_sizes(FastenerKind kind);

}  // namespace sheerlap

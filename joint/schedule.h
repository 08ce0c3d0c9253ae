#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/check.h"
#include "joint/check_lines.h"
#include "joint/drill_stations.h"
#include "joint/fasteners.h"
#include "joint/jig_pieces.h"
#include "joint/jigs.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"
#include "joint/setting_out.h"
#include "joint/side_ends.h"

namespace sheerlap {

struct Schedule {
  FastenerSpec fastener;               ///< what is drilled for
  std::vector<DrillStation> stations;  ///< starboard, port, transom; by girth
  std::vector<SideDatum> datums;       ///< each side's start and end
  std::vector<CheckLine> check_lines;
  std::vector<JigSegment> jigs;
  std::vector<JigPiece> jig_pieces;  ///< of `jigs`, in the same order
  SettingOut setting_out;
  Checks checks;
};

/// The drilling schedule of a layout.
///
/// @errors  of `fastener` and of `drill_stations`; at "jig.length_max": a jig that its
///          two bushes fill
Result<Schedule> schedule(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout);

}  // namespace sheerlap

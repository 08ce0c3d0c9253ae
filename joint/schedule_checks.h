#pragma once

#include <vector>

#include "joint/check.h"
#include "joint/drill_stations.h"
#include "joint/fasteners.h"
#include "joint/jig_pieces.h"
#include "joint/jigs.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What the stations of a layout are asked: edge distances, a hull that is met, a
/// length that serves, the countersink, the pitch; each names its worst station.
Checks station_checks(const Joint& joint,
                      const Layout& layout,
                      const std::vector<DrillStation>& stations,
                      const FastenerSpec& spec);

/// What a fastener's own values are asked: which of them were not read in their source
/// but remembered, and whether a pilot hole was published for a laminate.
Checks fastener_checks(const FastenerSpec& spec);

/// The jigs that share no hole with the one before though no corner parts them.
Checks jig_checks(const Perimeter& perimeter,
                  const std::vector<DrillStation>& stations,
                  const std::vector<JigSegment>& jigs,
                  const JigRules& rules);

/// Whether the bush takes the bit for the lip, and neighbouring bushes have room.
/// @param smallest_pitch  0 if there is none
Checks bush_checks(const JigRules& rules,
                   const FastenerSpec& spec,
                   Length smallest_pitch);

/// What is left of a jig between its bushes and the lip's low edge, on which it sits.
Checks bush_edge_checks(const JigRules& rules,
                        const std::vector<DrillStation>& stations,
                        const std::vector<JigPiece>& pieces);

}  // namespace sheerlap

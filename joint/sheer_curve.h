#pragma once

#include <memory>
#include <vector>

#include "geometry/curve.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A side as a stretch of the sheer's curve.
struct SheerSide {
  SideName name = SideName::Starboard;
  SidePath path;
  SideEnd start = SideEnd::Smooth;
  SideEnd end = SideEnd::Smooth;
};

/// The sheer as one curve that runs bow, starboard, transom, port; an open one runs
/// from its port end by way of the bow to its starboard end. A joint that stops at the
/// transom corners is open there, whatever the table says beyond.
struct SheerCurve {
  std::shared_ptr<const Curve> curve;
  std::vector<SheerKnot> knots;
  std::vector<SheerSide> sides;
};

/// @errors  at "sheer.row[N]" or "sheer": see `perimeter`
Result<SheerCurve> sheer_curve(const Sheer& sheer);

}  // namespace sheerlap

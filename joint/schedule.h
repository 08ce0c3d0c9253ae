#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/layout.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// One drill station.
struct DrillStation {
  std::string mark;  ///< S01, P01, T01 ...
  SideName side = SideName::Starboard;
  Length girth;       ///< running, on the drill line (lip's outer face)
  Length hull_girth;  ///< running, on the hull face at the drill line's depth
  Length pitch;       ///< girth from the station before, or from the side's start
  std::optional<Length> chord;  ///< straight from the station before
  Point3 point;                 ///< where the bit enters the lip's outer face, mm
  Vector3 axis;                 ///< unit, the way the bit goes, inboard
  Length edge_low;              ///< to the lip's low edge, its trim tolerance taken off
  Length edge_top;  ///< to the hull's top edge, its trim tolerance taken off
  Length gap;       ///< square to the hull face where the bit goes in
  Length stack;     ///< lip, gap and hull along the bit
  std::optional<Length> length;  ///< from stock; none if no length serves
  Length lip_hole;
  std::optional<Length> hull_pilot;  ///< none for bolts and rivets: as the lip
  Length countersink;                ///< diameter on the lip's outer face
  Length drill_depth;                ///< for the depth stop
  std::string jig;
  Length jig_girth;  ///< from the jig's first hole
  std::string because;
};

/// A dimension to check the setting-out by.
struct CheckLine {
  SideName side = SideName::Starboard;
  std::string what;
  std::string from;
  std::string to;
  Length value;
  std::string measured;  ///< "girth on the drill line" or "straight"
};

/// A piece of the drill jig: the fewest no longer than the jig rule allows.
struct JigSegment {
  std::string name;
  SideName side = SideName::Starboard;
  std::size_t first = 0;  ///< indices into `Schedule::stations`
  std::size_t last = 0;   ///< the next segment starts at this hole if it is shared
};

struct Schedule {
  std::vector<DrillStation> stations;  ///< starboard, port, transom; by girth
  std::vector<CheckLine> check_lines;
  std::vector<JigSegment> jigs;
  Checks checks;
};

/// The drilling schedule of a layout.
Result<Schedule> schedule(const Joint& joint,
                          const Perimeter& perimeter,
                          const Layout& layout);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/job.h"
#include "joint/sheets/strip_line.h"

namespace sheerlap {

/// A hole on a strip.
struct StripHole {
  std::string mark;
  Length girth;
  Point2 at = {0, 0};     ///< on the flat strip
  Length diameter;        ///< of the bit that goes first
  bool drillable = true;  ///< else it is to be crossed out
  Length room;            ///< girth to the nearest hole on the stretch
};

/// A part of a strip that is hatched and named.
struct StripBand {
  enum class Kind { KeepOut, Bridge } kind = Kind::KeepOut;
  Length from;
  Length to;
  std::string what;
  Length clear = {};  ///< of a keep-out: within the band at both ends
  Length space = {};  ///< of a bridge: from hole to hole, on both sides of a bow too
  Length limit = {};  ///< and the space that was asked for
};

/// All that is drawn on a stretch of a strip.
struct StripStretch {
  SideName side = SideName::Starboard;
  StripLine line;
  std::vector<StripHole> holes;  ///< by girth
  std::vector<StripBand> bands;
  std::string start;  ///< what its ends are: "ZERO: bow datum", "corner" ...
  std::string end;
  FlatDistortion distortion;
  std::size_t number = 1;
  std::size_t of = 1;

  std::vector<Length> girths() const;  ///< of its holes
};

/// The stretches of a side's strip; none without holes.
/// @param job  with its layout and schedule, and the side
std::vector<StripStretch> strip_content(const Job& job, SideName side);

/// Whether a side has holes to prick through.
bool has_strip(const Job& job, SideName side);

}  // namespace sheerlap

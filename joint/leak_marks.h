#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/bead_runs.h"
#include "joint/drill_stations.h"
#include "joint/readings_gap.h"

namespace sheerlap {

/// A drill station next to a leak, and what may tell why it leaks there.
struct LeakMark {
  std::string mark;
  Length girth;                ///< on the drill line
  Length gap;                  ///< of the boat, at the drill line's depth
  std::optional<Length> bead;  ///< size, none where no bead runs
  std::size_t beads = 0;       ///< side by side
  Length pitch;                ///< from the mark before it, or the side's start
};

/// Where water came through.
struct Leak {
  SideName side = SideName::Starboard;
  Length girth;  ///< on the drill line
  std::vector<LeakMark> marks;
};

/// What the marks next to a leak are judged by.
struct LeakSurroundings {
  const Perimeter& perimeter;
  const std::vector<DrillStation>& stations;
  const std::vector<BeadRun>& beads;
  const ReadingsGap& gap;
  Length depth;  ///< of the drill line
};

/// The marks next to a leak: the last one up to it and the first one beyond, as far as
/// its side has them. Water runs far inside a boat: a mark is where to look first, not
/// where the leak is.
std::vector<LeakMark> leak_marks(const LeakSurroundings& boat,
                                 SideName side,
                                 Length girth);

}  // namespace sheerlap

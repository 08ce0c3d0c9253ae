#include "joint/bead_changes.h"

#include <algorithm>

namespace sheerlap {
namespace {

constexpr Length rounding = Length::mm(0.01);

/// Whether one change goes on where another ends.
bool goes_on(const BeadChange& one, const BeadChange& next) {
  return one.side == next.side && one.to == next.from &&
         one.drawn_size == next.drawn_size && one.size == next.size &&
         one.drawn_beads == next.drawn_beads && one.beads == next.beads;
}

/// What the two runs have in common, if they are of one side.
BeadChange common(const BeadRun& drawn, const BeadRun& run) {
  return {run.side,
          std::max(drawn.from, run.from),
          std::min(drawn.to, run.to),
          drawn.size,
          run.size,
          drawn.beads,
          run.beads};
}

}  // namespace

std::vector<BeadChange> bead_changes(const std::vector<BeadRun>& drawn,
                                     const std::vector<BeadRun>& runs) {
  std::vector<BeadChange> changes;
  for (const BeadRun& run : runs)
    for (const BeadRun& was : drawn) {
      if (was.side != run.side) continue;
      const BeadChange change = common(was, run);
      const bool alike = was.size == run.size && was.beads == run.beads;
      if (alike || !(change.to - change.from > rounding)) continue;
      if (!changes.empty() && goes_on(changes.back(), change))
        changes.back().to = change.to;
      else
        changes.push_back(change);
    }
  return changes;
}

}  // namespace sheerlap

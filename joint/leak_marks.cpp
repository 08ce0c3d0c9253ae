#include "joint/leak_marks.h"

#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

LeakMark leak_mark(const LeakSurroundings& boat, const DrillStation& station) {
  LeakMark mark;
  mark.mark = station.mark;
  mark.girth = station.girth;
  mark.gap = boat.gap.gap(station.side, station.girth, boat.depth);
  mark.pitch = station.pitch;
  const PerimeterSide& side = *boat.perimeter.side(station.side);
  const Length girth = side.sheer.girth_at(place_on_sheer(side, station.girth));
  for (const BeadRun& run : boat.beads) {
    if (run.side != station.side || girth < run.from || girth > run.to) continue;
    mark.bead = run.size;
    mark.beads = run.beads;
    break;
  }
  return mark;
}

}  // namespace

std::vector<LeakMark> leak_marks(const LeakSurroundings& boat,
                                 SideName side,
                                 Length girth) {
  const DrillStation* before = nullptr;
  const DrillStation* beyond = nullptr;
  for (const DrillStation& station : boat.stations) {
    if (station.side != side) continue;
    if (station.girth <= girth) {
      before = &station;
    } else if (beyond == nullptr) {
      beyond = &station;
    }
  }
  std::vector<LeakMark> marks;
  for (const DrillStation* station : {before, beyond})
    if (station != nullptr) marks.push_back(leak_mark(boat, *station));
  return marks;
}

}  // namespace sheerlap

#include "joint/way_down.h"

#include <algorithm>

namespace sheerlap {

EntryOfSide side_entry(const Perimeter& perimeter, const PerimeterSide& side) {
  EntryOfSide found;
  Entry& entry = found.entry;
  entry.worst = Length::mm(1e300);
  Length greatest = Length::mm(-1e300);
  for (const SpanPart& part : side.parts)
    for (const double u : {part.from_u, part.to_u}) {
      const Place place{part.span, u};
      const Length lap = Length::mm(perimeter.lip->lap_mm(place));
      PlainWorking work;
      const Length clear =
          Length::mm(way_clear(work, perimeter.lip->offset(place, lap.in_mm()).offset,
                               perimeter.hull->offset(place, 0).offset));
      greatest = std::max(greatest, clear);
      if (clear < entry.worst)
        entry = {clear, lap, side.name, side.sheer.girth_at(place)};
    }
  found.spread = greatest - entry.worst;
  return found;
}

}  // namespace sheerlap

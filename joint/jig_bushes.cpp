#include "joint/jig_bushes.h"

#include <algorithm>

namespace sheerlap {

std::vector<JigBush> jig_bushes(const JigPiece& piece,
                                const std::vector<DrillStation>& stations,
                                const FastenerSpec& spec,
                                const JigRules& rules) {
  const auto count = static_cast<std::size_t>(std::count_if(
      piece.holes.begin(), piece.holes.end(),
      [&](const JigHole& hole) { return drillable(stations[hole.station]); }));
  if (count == 0) return {};
  if (!spec.hull_pilot) return {{"hole", spec.lip_hole, rules.bush, count}};
  return {{"pilot", *spec.hull_pilot, rules.bush, count},
          {"lip hole", spec.lip_hole, rules.bush, count}};
}

}  // namespace sheerlap

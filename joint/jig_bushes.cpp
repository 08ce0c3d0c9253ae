#include "joint/jig_bushes.h"

namespace sheerlap {

std::vector<JigBush> jig_bushes(const JigPiece& piece,
                                const FastenerSpec& spec,
                                const JigRules& rules) {
  const std::size_t count = piece.holes.size();
  if (!spec.hull_pilot) return {{"hole", spec.lip_hole, rules.bush, count}};
  return {{"pilot", *spec.hull_pilot, rules.bush, count},
          {"lip hole", spec.lip_hole, rules.bush, count}};
}

}  // namespace sheerlap

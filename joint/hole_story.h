#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/bond_strength.h"
#include "joint/drill_stations.h"
#include "joint/fastener_rows.h"
#include "joint/hole_spaces.h"
#include "joint/job.h"
#include "joint/rule_rows.h"

namespace sheerlap {

/// A hole at one place of the drill line, all other holes as they are.
struct HoleAt {
  DrillStation station;
  HoleSpace before;                    ///< towards the side's start
  HoleSpace after;                     ///< towards its end
  std::vector<std::string> stands_in;  ///< keep-outs and bends that it lies within
  RuleRows rules;  ///< chosen and read ones: its edges, ends and spaces
  std::optional<Length>
      reserve;  ///< the stack may grow so much before its length fails
  std::optional<FastenerRow> alone;  ///< the bond gone; none without a strength
  std::optional<BondPoint> bond;     ///< there; none without a strength
};

/// A hole moved along the drill line by itself.
struct HoleMove {
  Length by;                 ///< along the girth; negative: towards the side's start
  std::string way;           ///< "aft", "forward", "to port", "to starboard"
  std::optional<HoleAt> at;  ///< none where it cannot be
  std::string why_not;       ///< for that case
};

/// All that is known of one hole.
struct HoleStory {
  HoleAt here;
  std::vector<std::string> held_by;   ///< the limits that it stands up to
  std::optional<Length> next_length;  ///< in stock, longer than its own
  std::vector<HoleMove> moves;        ///< a step of the layout's and 10 mm, either way
};

/// The story of a hole.
///
/// @param job   with its schedule
/// @param mark  "S14"
/// @returns  nothing if no hole has that mark
std::optional<HoleStory> hole_story(const Job& job, const std::string& mark);

}  // namespace sheerlap

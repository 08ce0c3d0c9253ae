#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/adhesive.h"
#include "joint/check.h"
#include "joint/fit.h"
#include "joint/gap_readings.h"
#include "joint/readings_gap.h"
#include "joint/schedule.h"

namespace sheerlap {

/// What a boat's gaps are accepted by.
struct GapLimits {
  Length gap_min;
  Length gap_max;
  std::optional<Length> step;  ///< the most two neighbouring readings may differ by
  std::string min_address;     ///< of the value: "readings.gap_min"
  std::string max_address;
};

/// How a gap of a boat is known: between two readings of its side, beyond the first or
/// last of them, or on a side of which there is none, so that it is the drawn one.
enum class Known { Read, Held, Unread };

/// In which way a boat is out of its limits.
enum class OutKind { Tight, Wide, Step, NoFastener };

/// What a yard may do about it.
enum class Disposition { Grind, BuildUp, LongerFastener, SeatAgain, ReadAgain, Ask };

/// A stretch on which a boat is out of its limits.
struct NonConformance {
  std::size_t number = 1;
  OutKind kind = OutKind::Tight;
  SideName side = SideName::Starboard;
  Length from;        ///< girth on the drill line
  Length to;          ///< likewise
  std::string marks;  ///< of the holes in it: "S12-S17"; empty if there is none
  Length at;          ///< girth on the drill line of the worst; of a step, of its end
  Length depth;       ///< of the worst gap; of a step, of the edge
  Length value;  ///< worst gap; difference of two readings; length that would serve
  Length limit;  ///< what is asked; of a fastener the longest in stock
  Known known = Known::Read;  ///< at the worst
  std::vector<Disposition> open;
};

/// The gap at one edge of the lap, and what brings it inside the limits.
struct EdgeGap {
  Length gap;
  Length grind;     ///< to be taken off; 0 if nothing
  Length build_up;  ///< to be put on, or shimmed; 0 if nothing
};

/// The fastener of one hole, as drawn and in the boat.
struct FastenerAt {
  std::optional<Length> drawn;   ///< length from stock; none if none serves
  std::optional<Length> length;  ///< likewise, in the boat
  Length needed;                 ///< the least that serves in the boat
};

/// The gap of a boat at a hole or where it was read.
struct PlaceGap {
  std::string place;  ///< "S12", "station 4", "girth 1235 mm"
  SideName side = SideName::Starboard;
  Length girth;  ///< on the drill line
  EdgeGap top;   ///< at the hull's top edge
  EdgeGap low;   ///< at the lap's low edge
  Known known = Known::Read;
  std::optional<FastenerAt> fastener;  ///< of a hole
};

/// A stretch on which the boat takes other beads than the drawing.
struct BeadChange {
  SideName side = SideName::Starboard;
  Length from;  ///< girth along the sheer
  Length to;
  Length drawn_size;
  Length size;
  std::size_t drawn_beads = 1;
  std::size_t beads = 1;
};

/// What the drawing has where the boat differs, of the parts asked for.
struct DrawnParts {
  std::optional<Fit> fit;
  std::optional<AdhesivePlan> adhesive;
  std::optional<Schedule> schedule;
};

/// One boat, as its gap was read.
struct Boat {
  std::string file;  ///< the reading file as it was named; empty if there is none
  ReadingState state = ReadingState::Dry;
  std::vector<GapReading> readings;  ///< of every state, in the order given
  GapLimits limits;
  std::vector<SideCorrections> corrections;  ///< of the state, of every side
  std::vector<HeldStretch> held;  ///< where no two readings are about a place
  std::vector<SideName> unread;
  std::vector<PlaceGap> places;  ///< holes and readings, by side and girth
  std::vector<NonConformance> out;
  std::vector<BeadChange> beads;
  DrawnParts drawn;
  Checks checks;
};

}  // namespace sheerlap

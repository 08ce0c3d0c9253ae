#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/drill_stations.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// When a gap was read: the lid on for the dry fit, with the spreaders holding the hull
/// to its shape, or after the adhesive.
enum class ReadingState { Dry, Held, After };

/// "dry", "held" or "after".
std::string state_word(ReadingState state);

/// By what a reading's place is named.
enum class PlaceKind { Girth, Mark, Station };

/// "girth", "mark" or "station".
std::string kind_word(PlaceKind kind);

/// A gap reading as a reading file gives it.
struct GivenReading {
  SideName side = SideName::Starboard;
  PlaceKind kind = PlaceKind::Girth;
  Length girth;      ///< by girth: on the drill line, from the side's start
  std::string name;  ///< else: the mark, or the label of the sheer table's row
  std::optional<Length> top, low;  ///< at the hull's top edge, at the lap's low edge
  ReadingState state = ReadingState::Dry;
  std::string note;
};

/// A gap reading at its place on a joint.
struct GapReading {
  SideName side = SideName::Starboard;
  PlaceKind kind = PlaceKind::Girth;
  std::string name;  ///< the mark or label; by girth, that in mm
  Length girth;      ///< on the drill line, from the side's start
  std::optional<Length> top, low;
  ReadingState state = ReadingState::Dry;
  std::string note;
};

/// A reading's place in words: "mark S12 (starboard)", "girth 1235 mm (port)".
std::string place_words(const GapReading& reading);

/// The readings at their places, in the order given.
///
/// @param stations  the drill stations of the joint's schedule
/// @errors  at "reading[N]": a place that the joint does not have, or one in an
///          opening; a reading that stands twice for a place and a state
Result<std::vector<GapReading>> placed_readings(
    const Joint& joint,
    const Perimeter& perimeter,
    const std::vector<DrillStation>& stations,
    const std::vector<GivenReading>& given);

/// The state furthest along of which there are readings: after, held, dry.
///
/// @param readings  at least one
ReadingState latest_state(const std::vector<GapReading>& readings);

/// A girth on a side's drill line that has joint.
/// @errors  at `where`: the joint has no such side, the girth is off it or in an
/// opening
Result<Length> girth_with_joint(const Perimeter& perimeter,
                                SideName side,
                                Length girth,
                                const std::string& where);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/boat_model.h"
#include "joint/gap_readings.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A place read on boats: readings no further apart than 20 mm are of one.
struct PatternPlace {
  SideName side = SideName::Starboard;
  Length from;  ///< the first girth read there
};

/// The places that boats were read at, by side and girth.
/// @param boats  the readings of each; those of other states are left out
std::vector<PatternPlace> pattern_places(
    const Perimeter& perimeter,
    const std::vector<std::vector<GapReading>>& boats,
    ReadingState state);

/// What all boats read have in common, as readings.
struct BuiltPattern {
  std::vector<GapReading> readings;
  ReadingState state = ReadingState::Held;
};

/// Which of the places a girth is at; it must be at one.
std::size_t place_of(const std::vector<PatternPlace>& places,
                     SideName side,
                     Length girth);

/// What all boats read have in common: at each place the mean of its readings, edge by
/// edge, at their mean girth; the lid as it lay on the mean, without how far it lay
/// fore and aft, athwartships and turned.
///
/// How far the hulls were open on the mean is in it, and so is a lip that is thicker.
///
/// @errors  at "sheer.row[N]": a place at which no gap can be measured
Result<BuiltPattern> pattern_of(const Joint& joint,
                                const Perimeter& perimeter,
                                const std::vector<std::vector<GapReading>>& boats,
                                ReadingState state);

/// How far the pattern is outward of the drawing where least and greatest, of the two
/// edges' means; at least one reading.
struct PatternReach {
  Length least, greatest;
};
PatternReach reach_of(const Perimeter& perimeter, const BuiltPattern& pattern);

/// Puts the pattern into every boat of the model, gaps, volume and holes: straight
/// along the girth between its places, held beyond them, top and low edge apart.
void add_pattern(BoatModel& model,
                 const Perimeter& perimeter,
                 const BuiltPattern& pattern);

}  // namespace sheerlap

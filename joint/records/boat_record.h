#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "joint/gap_readings.h"
#include "joint/leak_marks.h"

namespace sheerlap {

/// A boat as it was built.
struct BoatRecord {
  std::int64_t hull = 0;  ///< its number, by which boats are in order
  std::string title;      ///< of the joint
  Length gap_min;         ///< the adhesive's gap window
  Length gap_max;
  std::optional<Length> mean_gap;  ///< all round, of the latest state read
  std::optional<double> litres;    ///< of adhesive used
  std::optional<std::int64_t> holes;
  std::vector<GapReading> readings;
  std::vector<Leak> leaks;
};

/// A boat in a list of them.
struct BoatLine {
  std::int64_t hull = 0;
  std::optional<Length> mean_gap;
  std::optional<double> litres;
  std::optional<std::int64_t> holes;
  std::size_t readings = 0;
  std::size_t outside = 0;  ///< gaps read that are outside the boat's gap window
  std::size_t leaks = 0;
};

/// Every boat of a record, by hull number.
struct BoatList {
  std::string title;
  std::vector<BoatLine> boats;
};

/// The gaps of one place, edge and state over the boats.
struct GapSeries {
  SideName side = SideName::Starboard;
  PlaceKind kind = PlaceKind::Girth;
  std::string name;
  Length girth;  ///< of the last boat's
  ReadingState state = ReadingState::Dry;
  bool low = false;                 ///< the lap's low edge, else the hull's top edge
  std::vector<std::int64_t> hulls;  ///< ascending
  std::vector<double> gaps_mm;
};

/// What is kept of a boat as a whole.
struct BoatFigures {
  std::int64_t hull = 0;
  std::optional<Length> mean_gap;
  std::optional<double> litres;
};

/// What `record_charts` is made from.
struct RecordSeries {
  std::string title;
  Length gap_min;  ///< the window of the last boat
  Length gap_max;
  std::vector<BoatFigures> boats;
  std::vector<GapSeries> series;  ///< by side, girth, state and edge
};

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/gap_profile.h"
#include "joint/gap_readings.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// How far a boat's gap is from the nominal one where it was read.
struct GapCorrection {
  Length girth;  ///< on the drill line
  Length top, low;
  bool one_edge = false;  ///< one edge only was read, and stands for both
  std::string place;      ///< in words
  /// Whose it is, by their places in the list of readings.
  std::vector<std::size_t> readings = {};
  /// Not read: on the centreline, between the readings of both sides.
  bool between_sides = false;
};

/// How far the gap of one side is from the nominal one.
struct SideCorrections {
  SideName side = SideName::Starboard;
  std::vector<GapCorrection> at;  ///< by girth; none: the side is as drawn
};

/// A stretch beyond the first or last reading of a side: the correction there is that
/// of this reading.
struct HeldStretch {
  SideName side = SideName::Starboard;
  Length from, to;  ///< girth on the drill line
  Length reading;   ///< its girth
};

/// The gap of one boat: the nominal one and a correction, straight along the drill
/// line's girth between its readings, top and low edge apart, and straight down the lap
/// between them. Where both sides meet without a corner it runs on from one side's
/// first reading to the other's.
class ReadingsGap {
 public:
  /// @param perimeter  referred to, not copied
  /// @param readings   of this perimeter; those of another state are left out
  ReadingsGap(const Perimeter& perimeter,
              const std::vector<GapReading>& readings,
              ReadingState state);

  /// The gap of the boat; @param girth  on the side's drill line
  Length gap(SideName side, Length girth, Length depth) const;
  /// The mean gap all round, of the top and the low edge, by girth along the sheer.
  /// @accuracy  sections 10 mm apart, trapezium rule
  Length mean() const;

  /// By girth, of one side; empty where none was read: the gap there is the nominal
  /// one.
  const std::vector<GapCorrection>& corrections(SideName side) const;
  /// Those of all sides, in the perimeter's order.
  std::vector<SideCorrections> all_corrections() const;
  /// Where the correction is not between two readings.
  std::vector<HeldStretch> held() const;
  /// The sides of which there is no reading.
  std::vector<SideName> unread() const;

 private:
  struct Side {
    const PerimeterSide* side;
    GapProfile profile;
    std::vector<GapCorrection> corrections;
  };
  const Side& named(SideName name) const;
  /// Carries the correction on over the centreline, at both starts or both ends.
  void join(bool at_start);
  static Length nominal(const Side& side, Length girth, bool low);

  const Perimeter& perimeter_;
  std::vector<Side> sides_;
};

}  // namespace sheerlap

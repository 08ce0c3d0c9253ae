#pragma once

#include "joint/sheets/strip_line.h"

namespace sheerlap {

/// A strip whose drill line is an arc, hollow upwards, or straight.
struct ArcStrip {
  double radius_mm = 0;  ///< of the drill line; 0 is straight
  double length_mm = 0;  ///< of the drill line
  double above_mm = 28;  ///< from the drill line to the sheer, square to it
  double below_mm = 22;  ///< and to the low edge
  SideName side = SideName::Starboard;
};

/// Rulings 2 mm apart; starts at girth 100.
StripLine arc_strip(const ArcStrip& arc);

inline constexpr Length arc_strip_start = Length::mm(100);

}  // namespace sheerlap

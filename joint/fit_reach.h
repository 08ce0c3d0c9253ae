#pragma once

#include <vector>

#include "joint/fit.h"

namespace sheerlap {

/// Lengths no further apart than this are the same, and their order is rounding.
constexpr double alike_mm = 1e-6;

/// The worst value of a side, where it is, and how far the side's other sections are
/// from it.
struct SideWorst {
  SideName side = SideName::Starboard;
  Length worst;
  Length girth;
  Length spread;
};

/// Where a worst value is to be had.
///
/// Sides agree whose values differ by no more than 1e-6 mm; if they vary along the
/// side, only where they are worst at the same girth, within 1 mm.
///
/// @param sides  all sides of the joint, in order
/// @param named  the index of the side whose place is named
Reach reach_of(const std::vector<SideWorst>& sides, std::size_t named);

/// "starboard and port at girth 2500 mm along the sheer", "all round", or "all along
/// the transom".
std::string reach_words(const Reach& reach, Length girth);

/// The checks of a fit whose places are known.
///
/// A lid that clashes coming straight down fails, unless there is another way.
///
/// @param other_way  it is turned down, or the hull may be squeezed by as much
Checks fit_checks(const Fit& fit, const Adhesive& adhesive, bool other_way);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/result.h"
#include "joint/adhesive_amounts.h"
#include "joint/bead_runs.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/working_time.h"

namespace sheerlap {

/// How much closer and further off the lip stands in the least and the most: what a
/// hull out of shape comes to (common practice, no source).
inline constexpr Length lip_shift = Length::mm(1);

struct AdhesivePlan {
  double bond_area_mm2 = 0;  ///< of the hull face over the bond band
  std::vector<BeadRun> beads;
  AdhesiveAmounts nominal;
  /// The lip everywhere `lip_shift` closer, or further off, level; none if its corners
  /// do not meet there.
  std::optional<AdhesiveAmounts> least, most;
  std::optional<TimePlan> time;  ///< if shop and working time are given
  Checks checks;
};

/// The adhesive the joint takes.
///
/// The joint's volume is what the two faces enclose over the bond band, mitres at the
/// corners included, where the lip is outside the hull. The beads are laid along the
/// sheer; the corners' own volume is in the joint's, not in the section that a bead has
/// to cover.
///
/// @param joint       with its adhesive
/// @param perimeter   of the joint
/// @param fasteners   to drive before the adhesive goes off
/// @errors  at "sheer.row[N]": faces that do not meet at a corner
Result<AdhesivePlan> adhesive_plan(const Joint& joint,
                                   const Perimeter& perimeter,
                                   std::size_t fasteners);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/quantity.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// How much of the joint, along the sheer, has a section of up to so much and more than
/// the band before.
struct SectionBand {
  double up_to_mm2 = 0;  ///< the section between the faces, no squeeze-out
  Length least;          ///< with the lip closer, see `AdhesivePlan`
  Length nominal;
  Length most;  ///< with the lip further off
};

/// The joint by its section, cut where the beads change, so that the beads that
/// another squeeze-out takes can be summed from it.
///
/// A band laid with the beads that its greatest section needs takes what `bead_runs`
/// lays where the squeeze-out is one the bands are cut for: the adhesive's own, and
/// whole steps of `step_percent` from 0 to `percent_to`. Any other takes no less than
/// `bead_runs` lays, and up to `percent_to` no more than the next of those.
struct SectionBands {
  std::vector<SectionBand> bands;  ///< ascending, none without length
  int step_percent = 0;            ///< 0: cut for the adhesive's own squeeze-out only
  static constexpr int percent_to = 50;
};

/// The section bands of a joint, its lip as drawn and moved by `lip_shift`.
///
/// The bands are cut more coarsely, or for the adhesive's own squeeze-out only, where
/// very small beads would make very many of them.
///
/// @param joint  with its adhesive
SectionBands section_bands(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap

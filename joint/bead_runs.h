#pragma once

#include <cstddef>
#include <vector>

#include "geometry/enclosed_volume.h"
#include "geometry/quantity.h"
#include "joint/adhesive_product.h"
#include "joint/bead.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A stretch laid with one bead size.
struct BeadRun {
  SideName side = SideName::Starboard;
  Length from;  ///< girth along the sheer
  Length to;
  Length size;  ///< base and height of a triangle, diameter if round
  std::size_t beads =
      1;                ///< side by side; more than one where the largest is too small
  double area_mm2 = 0;  ///< of all the beads together
  double needed_mm2 = 0;  ///< the run's largest joint section, squeeze-out included
};

/// The runs of a side, by girth: at each place the smallest bead that covers the
/// joint's section there and the squeeze-out.
///
/// A run ends where the section needed passes that of a bead, at an opening and at the
/// side's ends.
///
/// @param space  between the faces of the perimeter over the bond band
/// @accuracy  a run's ends within 1e-9 of a span's length; a rise and fall of the
///            section within a sixteenth of a span counts if it shows there
std::vector<BeadRun> bead_runs(const PerimeterSide& side,
                               const EnclosedSpace& space,
                               const Adhesive& adhesive);

/// The runs of every side, in the order of the sides.
std::vector<BeadRun> bead_runs(const Perimeter& perimeter,
                               const EnclosedSpace& space,
                               const Adhesive& adhesive);

/// What a set of runs takes: each run's section times its length.
Volume bead_volume(const std::vector<BeadRun>& runs);

}  // namespace sheerlap

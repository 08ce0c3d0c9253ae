#pragma once

#include <cstddef>
#include <string>
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

/// All that is laid with the same beads.
struct LaidLength {
  Length size;
  std::size_t beads = 1;
  double area_mm2 = 0;  ///< of all the beads together
  Length length;
};

/// The lengths of runs, added up by their beads, in the order these come first.
std::vector<LaidLength> lengths_laid(const std::vector<BeadRun>& runs);

/// What a set of runs takes, ml.
template <class Working>
auto volume_laid(Working& work, const std::vector<BeadRun>& runs) {
  typename Working::Number sum(0);
  std::size_t number = 0;
  for (const LaidLength& laid : lengths_laid(runs)) {
    const std::string at = "_" + std::to_string(++number);
    const std::string a = "a" + at, L = "L" + at;
    const auto term =
        work.given({a, "section of one kind of bead", "mm2"}, laid.area_mm2,
                   Origin::of_joint("adhesive.beads: `area`")) *
        work.given({L, "girth laid with it, all runs together", "mm"},
                   laid.length.in_mm(),
                   Origin::of_joint("adhesive.beads: `to` less `from`, added"));
    if (number == 1)
      sum = term;
    else
      sum = sum + term;
  }
  return work.figure({"V_bead", "adhesive laid as beads", "ml",
                      "derived: section times length, run by run",
                      "laid along the sheer; the girth of the band is a little "
                      "longer or shorter"},
                     sum / 1000);
}

/// What a set of runs takes: each run's section times its length.
Volume bead_volume(const std::vector<BeadRun>& runs);

}  // namespace sheerlap

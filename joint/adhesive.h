#pragma once

#include <optional>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/check.h"
#include "joint/joint.h"
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

/// What the adhesive of one boat comes to.
struct AdhesiveAmounts {
  Volume joint;  ///< between the faces over the bond band
  Volume bead;   ///< laid
  Volume boat;   ///< with waste and nozzles
  std::size_t packs = 0;
  std::size_t nozzles = 0;
  std::optional<double> mass_kg;  ///< of `boat`
};

/// From the first mixed adhesive to the last fastener, against the working time.
struct TimePlan {
  Duration dispensing;
  Duration pack_changes;
  Duration seating;
  Duration driving;
  Duration total;
  Duration working_time;  ///< at the shop's temperature
};

struct AdhesivePlan {
  double bond_area_mm2 = 0;  ///< of the hull face over the bond band
  std::vector<BeadRun> beads;
  AdhesiveAmounts least;  ///< the lip everywhere 1 mm closer
  AdhesiveAmounts nominal;
  AdhesiveAmounts most;  ///< the lip everywhere 1 mm further off
  std::optional<TimePlan> time;
  Checks checks;
};

/// The adhesive the joint takes.
///
/// @param joint       with its adhesive
/// @param perimeter   of the joint
/// @param fasteners   to drive before the adhesive goes off
Result<AdhesivePlan> adhesive_plan(const Joint& joint,
                                   const Perimeter& perimeter,
                                   std::size_t fasteners);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "geometry/result.h"
#include "joint/gap_profile.h"
#include "joint/hull_movement.h"
#include "joint/lid_gap.h"
#include "joint/perimeter.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// Points of the hull face, with what a squeeze at each spreader does to them.
class SqueezedLap {
 public:
  /// @param perimeter  referred to
  /// @param free       the hull's free shape, referred to
  /// @errors  at "spreader[N].x": a place that is not on both sides, or is given twice
  static Result<SqueezedLap> with(const std::vector<Spreader>& spreaders,
                                  const Perimeter& perimeter,
                                  const HullMovement& free);

  /// @param profile  of this side
  /// @param place    of the sheer, in one of the side's spans
  LapPoint at(const PerimeterSide& side,
              const GapProfile& profile,
              Place place,
              double depth_mm) const;

 private:
  SqueezedLap(const Perimeter& perimeter, const HullMovement& free)
      : perimeter_(&perimeter), free_(&free) {}

  const Perimeter* perimeter_;
  const HullMovement* free_;
  std::vector<HullMovement> influences_;  ///< of a mm of squeeze, one a spreader
};

/// The middle of the boat's length on the centreline, and half its length.
LidDatum lid_datum(const Perimeter& perimeter);

}  // namespace sheerlap

#pragma once

#include "geometry/result.h"
#include "joint/gap_profile.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// What a mean gap by area is made of: the mean is the first over the second. The area
/// is that of the hull face over the bond band.
struct MeanParts {
  double gap_mm3 = 0;  ///< gap times area
  double area_mm2 = 0;

  void add(const MeanParts& more) {
    gap_mm3 += more.gap_mm3;
    area_mm2 += more.area_mm2;
  }
};

/// The parts along one side, mitres left out.
MeanParts side_mean_parts(const Joint& joint,
                          const Perimeter& perimeter,
                          const PerimeterSide& side,
                          const GapProfile& profile);

/// What the mitres add.
/// @errors  see `mitre`
Result<MeanParts> mitre_mean_parts(const Joint& joint, const Perimeter& perimeter);

/// The space between hull and lip over the joint's bond band.
/// The perimeter is referred to, not copied.
EnclosedSpace bond_space(const Joint& joint, const Perimeter& perimeter);

}  // namespace sheerlap

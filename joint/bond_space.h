#pragma once

#include "geometry/enclosed_volume.h"
#include "geometry/ruled_face.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// The space to be filled between the hull's face and a lip face over the bond band;
/// over the whole lap where the band is not given.
///
/// @param perimeter, lip  must outlive the space
EnclosedSpace bond_space(const BondBand& band,
                         const Perimeter& perimeter,
                         const RuledFace& lip);

}  // namespace sheerlap

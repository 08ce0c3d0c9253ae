#pragma once

#include <cstddef>
#include <optional>

#include "geometry/quantity.h"
#include "joint/adhesive_product.h"

namespace sheerlap {

/// What the adhesive of one boat comes to.
struct AdhesiveAmounts {
  Volume joint;                   ///< between the faces over the bond band
  Volume bead;                    ///< laid
  Volume boat;                    ///< with waste and with what each fresh nozzle takes
  std::size_t packs = 0;          ///< opened for this boat alone
  std::size_t nozzles = 0;        ///< one a pack
  std::optional<double> mass_kg;  ///< of `boat`; none without a density
};

/// The amounts of one boat from what its joint holds and what is laid in it.
///
/// A pack gives what comes out of it less the purge of its nozzle, so the packs are
/// bead (1 + waste) / (pack_usable - nozzle_purge), rounded up, at least one.
///
/// @param adhesive  its purge less than what comes out of a pack
AdhesiveAmounts amounts_of(Volume joint, Volume bead, const Adhesive& adhesive);

}  // namespace sheerlap

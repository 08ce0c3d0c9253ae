#pragma once

#include <cstddef>
#include <optional>

#include "joint/adhesive_amounts.h"
#include "joint/adhesive_product.h"
#include "joint/joint.h"
#include "joint/order_lines.h"

namespace sheerlap {

/// Packs and nozzles for a run of boats.
///
/// Packs are rounded up once for the run: what one boat leaves in a pack goes into the
/// next. Each boat starts with fresh nozzles, so a part pack takes a nozzle again. The
/// pack_size is what comes out of a pack; what stays in it is a line of its own, after
/// the rounding.
///
/// @param amounts  of one boat
/// @param boats    >= 1
/// @param guns     >= 1, each with an open pack of its own
/// @accuracy  packs and nozzles are enough however the guns share the work, so long as
///            one goes on, its nozzle on, where another is empty; exact where every gun
///            ends each boat but the last with a part pack worth a nozzle. Derivation:
///            a nozzle is for one pack on one boat. `packs` of them are for fresh
///            packs, and from one boat to the next at most one a gun for its part pack,
///            which costs the purge, or less if what is left is no more than that and
///            is thrown away. When all packs are empty at least packs (usable - purge)
///            - guns (boats - 1) purge was laid, which covers boats x bead (1 + waste)
///            if
///              packs   = (boats bead (1 + waste) + guns (boats - 1) purge)
///                        / (usable - purge), rounded up,
///              nozzles = packs + guns (boats - 1).
///            Those packs are the run's need, with all its nozzles' purge, in packs. It
///            is never below what the boats take one by one: the rest is an allowance.
OrderPart adhesive_order(const Adhesive& adhesive,
                         const AdhesiveAmounts& amounts,
                         std::size_t boats,
                         std::size_t guns);

/// The largest delivery that is used up before it expires.
struct ShelfCap {
  double boats = 0;            ///< boats built within the shelf life
  std::size_t packs = 0;       ///< at most this many a delivery
  std::size_t deliveries = 0;  ///< for the run
};

/// The shelf cap of an adhesive; none unless shelf life and building rate are given.
///
/// @param packs  for the whole run
/// @source  derived: months of 365.25 / 12 days
std::optional<ShelfCap> shelf_cap(const Adhesive& adhesive,
                                  const AdhesiveAmounts& amounts,
                                  const OrderRules& rules,
                                  std::size_t packs);

}  // namespace sheerlap

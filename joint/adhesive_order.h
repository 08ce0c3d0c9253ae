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
/// next. The pack_size is what comes out of a pack; what stays in it is a line of its
/// own, after the rounding.
///
/// @param amounts  of one boat
/// @param boats    >= 1
OrderPart adhesive_order(const Adhesive& adhesive,
                         const AdhesiveAmounts& amounts,
                         std::size_t boats);

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

#pragma once

#include "joint/joint.h"
#include "joint/order_lines.h"
#include "joint/schedule.h"

namespace sheerlap {

/// Fasteners by length for a run of boats, with spares and in whole boxes, and for
/// bolts their nuts and washers. Stations that no length in stock serves have a line of
/// their own.
///
/// @param choice  for boxes and prices
OrderPart fastener_order(const FastenerChoice& choice,
                         const Schedule& schedule,
                         const OrderRules& rules);

}  // namespace sheerlap

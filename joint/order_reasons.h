#pragma once

#include "joint/adhesive.h"
#include "joint/order.h"
#include "joint/reasons/reason.h"
#include "joint/schedule.h"

namespace sheerlap {

/// Why an order comes to what it does.
/// @param joint  with its adhesive and its order rules
Explanations order_reasons(const Joint& joint,
                           const AdhesivePlan& adhesive,
                           const Schedule& schedule,
                           const Order& order);

}  // namespace sheerlap

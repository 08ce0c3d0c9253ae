#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "joint/adhesive.h"
#include "joint/adhesive_order.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/order_lines.h"
#include "joint/schedule.h"

namespace sheerlap {

struct Order {
  std::size_t boats = 1;
  std::vector<OrderLine> lines;  ///< adhesive, nozzles, fasteners by length
  std::vector<Allowance> allowances;
  std::optional<ShelfCap> shelf;
  std::optional<double> total;  ///< of the lines that have a price; none if none has
  std::optional<double> per_boat;
  Checks checks;
};

/// The guns that adhesive is laid with; one where the joint file has no shop.
std::size_t guns_of(const Joint& joint);

/// What to buy for the run of boats; packs and boxes are rounded up once, for the run.
///
/// @param joint  with its adhesive and its order rules
Order order(const Joint& joint, const AdhesivePlan& adhesive, const Schedule& schedule);

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/adhesive.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/schedule.h"

namespace sheerlap {

/// One line of what goes into an item's need, so that a buyer can change it.
struct Allowance {
  std::string item;  ///< the order line it belongs to
  std::string what;  ///< "squeeze-out", "spares" ...
  double amount = 0;
  std::string unit;   ///< "ml", "pieces", "packs"
  std::string basis;  ///< "10 % of the joint volume"
};

/// One thing to buy, for the whole run of boats.
struct OrderLine {
  std::string item;
  double need = 0;  ///< in `unit`, for the run
  std::string unit;
  double pack_size = 1;  ///< in `unit`
  std::size_t packs = 0;
  std::optional<double> price;  ///< a pack
  std::optional<double> total;
};

/// The largest delivery that is used up before it expires.
struct ShelfCap {
  double boats = 0;  ///< boats built within the shelf life
  std::size_t packs = 0;
  std::size_t deliveries = 0;  ///< for the run
};

struct Order {
  std::size_t boats = 1;
  std::vector<OrderLine> lines;
  std::vector<Allowance> allowances;
  std::optional<ShelfCap> shelf;
  std::optional<double> total;
  std::optional<double> per_boat;
  Checks checks;
};

/// What to buy for the run of boats; packs and boxes are rounded up once, for the run.
///
/// @param joint  with its adhesive and its order rules
Order order(const Joint& joint, const AdhesivePlan& adhesive, const Schedule& schedule);

}  // namespace sheerlap

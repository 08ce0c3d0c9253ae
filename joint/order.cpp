#include "joint/order.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cassert>
#include <string>

#include "joint/fastener_order.h"
#include "joint/order_workings.h"

namespace sheerlap {
namespace {

void add(Order& order, const OrderPart& part) {
  order.lines.insert(order.lines.end(), part.lines.begin(), part.lines.end());
  order.allowances.insert(order.allowances.end(), part.allowances.begin(),
                          part.allowances.end());
}

void add_totals(Order& order) {
  std::vector<std::string> unpriced;
  for (const OrderLine& line : order.lines)
    if (!line.total) unpriced.push_back(line.item);
  if (unpriced.size() == order.lines.size()) return;
  PlainWorking work;
  order.total = order_total(work, order.lines);
  order.per_boat = total_of_a_boat(work, *order.total, order.boats);
  if (!unpriced.empty())
    order.checks.push_back({"order.prices",
                            fmt::format("the total is without {}: no price is given",
                                        fmt::join(unpriced, ", ")),
                            static_cast<double>(unpriced.size()), std::nullopt, "",
                            CheckState::Warn, "the joint file"});
}

Check shelf_check(const ShelfCap& cap, std::size_t boats) {
  const bool at_once = cap.deliveries <= 1;
  if (cap.boats < 1)
    return {"order.shelf_life",
            "a delivery expires before one boat has used it up: a shorter time from "
            "delivery to use, or a smaller pack",
            1,
            cap.boats,
            "boats",
            CheckState::Fail,
            "the joint file: adhesive.shelf_life, order.boats_a_month"};
  return {"order.shelf_life",
          at_once ? "the run's adhesive is used up within its shelf life"
                  : fmt::format("the run's adhesive bought at once would expire before "
                                "it is used up: {} deliveries of at most {} packs",
                                cap.deliveries, cap.packs),
          static_cast<double>(boats),
          cap.boats,
          "boats",
          at_once ? CheckState::Pass : CheckState::Warn,
          "the joint file: adhesive.shelf_life, order.boats_a_month"};
}

}  // namespace

std::size_t guns_of(const Joint& joint) {
  return joint.shop ? static_cast<std::size_t>(joint.shop->guns) : 1;
}

Order order(const Joint& joint,
            const AdhesivePlan& adhesive,
            const Schedule& schedule) {
  assert(joint.adhesive && joint.order && joint.order->boats >= 1);
  Order order;
  order.boats = joint.order->boats;
  const OrderPart paste =
      adhesive_order(*joint.adhesive, adhesive.nominal, order.boats, guns_of(joint));
  add(order, paste);
  add(order, fastener_order(joint.fastener, schedule, *joint.order));
  order.shelf = shelf_cap(*joint.adhesive, adhesive.nominal, *joint.order,
                          paste.lines.front().packs);
  if (order.shelf)
    order.checks.push_back(shelf_check(*order.shelf, order.boats));
  else if (joint.adhesive->shelf_life)
    order.checks.push_back({"order.shelf_life",
                            "the shelf life is not looked at: order.boats_a_month is "
                            "not given",
                            joint.adhesive->shelf_life->in_days(), std::nullopt, "days",
                            CheckState::Warn, "the joint file"});
  add_totals(order);
  return order;
}

}  // namespace sheerlap

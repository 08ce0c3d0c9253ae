#include "joint/documents/order_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string money(const std::optional<double>& amount) {
  return amount ? decimals(*amount, 2) : "-";
}

/// Whether every line has its price.
bool complete(const Order& order) {
  return std::all_of(order.lines.begin(), order.lines.end(),
                     [](const OrderLine& line) { return line.total.has_value(); });
}

std::string lines(const Order& order, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"item"}, Align::Left},
                   {{"need"}},
                   {{"unit"}, Align::Left},
                   {{"out of", "a pack"}},
                   {{"packs", "to buy"}},
                   {{"price", "a pack"}},
                   {{"total"}}};
  for (const OrderLine& line : order.lines)
    table.rows.push_back(
        {style.sentence(line.item), at_most_decimals(line.need, 1), line.unit,
         at_most_decimals(line.pack_size, 1), fmt::format("{}", line.packs),
         line.price ? price_text(*line.price) : "-", money(line.total)});
  if (order.total)
    table.rows.push_back(
        {complete(order) ? "in all" : "in all, without what has no price", "", "", "",
         "", "", money(order.total)});
  if (order.per_boat)
    table.rows.push_back({"for each boat", "", "", "", "", "", money(order.per_boat)});
  return text_of(table);
}

std::string allowances(const Order& order, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"item and allowance"}, Align::Left},
                   {{"amount"}},
                   {{"unit"}, Align::Left},
                   {{"basis"}, Align::Left}};
  const std::string* item = nullptr;
  for (const Allowance& allowance : order.allowances) {
    if (item == nullptr || *item != allowance.item)
      table.rows.push_back({style.sentence(allowance.item), "", "", ""});
    item = &allowance.item;
    table.rows.push_back({"  " + style.sentence(allowance.what),
                          at_most_decimals(allowance.amount, 1), allowance.unit,
                          style.sentence(allowance.basis)});
  }
  return "\nWhat the needs are made of\n" + text_of(table);
}

/// What the adhesive of the run comes to with one of the lips.
std::vector<std::string> range_row(const std::string& name,
                                   const std::optional<AdhesiveAmounts>& amounts,
                                   const Job& job) {
  if (!amounts) return {name, "-", "-", "-", "-"};
  const auto part_of = [&](const AdhesiveAmounts& of) {
    return adhesive_order(*job.joint.adhesive, of, job.order->boats,
                          guns_of(job.joint));
  };
  const auto cost = [](const OrderPart& part) {
    double sum = 0;
    for (const OrderLine& line : part.lines) sum += line.total.value_or(0);
    return sum;
  };
  const OrderPart part = part_of(*amounts);
  std::optional<double> total = job.order->total;
  if (total) *total += cost(part) - cost(part_of(job.adhesive->nominal));
  return {name, at_most_decimals(part.lines[0].need, 0),
          fmt::format("{}", part.lines[0].packs),
          fmt::format("{}", part.lines[1].packs), money(total)};
}

std::string range_text(const Job& job, const NumberStyle& style) {
  const std::string shift = style.size_with_unit(lip_shift);
  TextTable table;
  table.columns = {{{"how the lip stands, all boats"}, Align::Left},
                   {{"ml"}},
                   {{"packs"}},
                   {{"nozzles"}},
                   {{"order in all"}}};
  const AdhesivePlan& plan = *job.adhesive;
  table.rows = {range_row("least: " + shift + " closer", plan.least, job),
                range_row("nominal: as drawn", plan.nominal, job),
                range_row("most: " + shift + " further off", plan.most, job)};
  return "\nThe range, and why\n" + text_of(table) +
         wrapped(
             "Hulls out of shape take more or less than the drawing. Order the "
             "nominal, "
             "have the difference up to the most within reach of a further order, and "
             "read the gaps of the first boats before the next lot (common practice, "
             "no "
             "source).");
}

std::string shelf_text(const ShelfCap& shelf) {
  return "\n" +
         wrapped(fmt::format(
             "Shelf life: a delivery of at most {} is used up before it expires "
             "({} boats); the run takes {}.",
             counted(shelf.packs, "pack"), at_most_decimals(shelf.boats, 1),
             shelf.deliveries == 1 ? "1 delivery"
                                   : fmt::format("{} deliveries", shelf.deliveries)));
}

}  // namespace

std::string order_text(const Job& job, const NumberStyle& style) {
  const Order& order = *job.order;
  std::string text =
      wrapped(fmt::format(
          "To buy for {}. Packs and boxes are rounded up once, for the "
          "whole run, for the joint as drawn (nominal). An opened pack "
          "of adhesive is kept for the next boat, each gun's its own. A pack "
          "of adhesive is sold as {} ml, of which {} ml comes out. Prices are as the "
          "joint file gives them; \"-\" is "
          "a price not given.",
          counted(order.boats, "boat"),
          at_most_decimals(job.joint.adhesive->pack.in_ml(), 1),
          at_most_decimals(job.joint.adhesive->pack_usable.in_ml(), 1))) +
      "\n" + lines(order, style) + range_text(job, style) + allowances(order, style);
  if (order.shelf) text += shelf_text(*order.shelf);
  if (job.joint.tolerance)
    text +=
        "\n" + wrapped(
                   "All this is for the drawing's boat; `tolerance` tells what boats "
                   "as they are take.");
  return text;
}

}  // namespace sheerlap

#include "joint/documents/order_text.h"

#include <fmt/format.h>

#include <algorithm>

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
                   {{"pack", "size"}},
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
      wrapped(
          fmt::format("To buy for {}. Packs and boxes are rounded up once, for the "
                      "whole run, for the joint as drawn (nominal). An opened pack "
                      "of adhesive is kept for the next boat; its size is what comes "
                      "out of it. Prices are as the joint file gives them; \"-\" is "
                      "a price not given.",
                      counted(order.boats, "boat"))) +
      "\n" + lines(order, style) + allowances(order, style);
  if (order.shelf) text += shelf_text(*order.shelf);
  return text;
}

}  // namespace sheerlap

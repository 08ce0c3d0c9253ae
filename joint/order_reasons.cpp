#include "joint/order_reasons.h"

#include <fmt/format.h>

#include <array>
#include <utility>

#include "joint/adhesive_needs.h"
#include "joint/fastener_order.h"
#include "joint/order_workings.h"
#include "joint/shelf_needs.h"

namespace sheerlap {
namespace {

/// Where the adhesive's lines stand among the order's.
constexpr std::size_t paste_line = 0, nozzle_line = 1, first_fastener_line = 2;
/// Of the allowances the first ten are the adhesive's and the nozzles'.
constexpr std::size_t first_fastener_allowance = 10;

std::string amount_at(std::size_t index) {
  return fmt::format("order_allowances.{}.amount", index);
}

/// The paste, its allowances and its nozzles.
void add_adhesive(Explanations& reasons, const AdhesiveRun& run) {
  WrittenWorking nozzles, paste;
  const auto nozzle_need = nozzles_needed(nozzles, run);
  adhesive_needed(paste, run, nozzle_need.boat_by_boat.value(),
                  nozzle_need.for_part_packs.value());
  Explanation need{fmt::format("order.{}.need", paste_line),
                   "adhesive for the run of boats: what each allowance adds, and packs",
                   paste.release(),
                   {{fmt::format("order.{}.need", paste_line), "V_need"},
                    {fmt::format("order.{}.packs", paste_line), "n_packs"},
                    {fmt::format("order.{}.pack_size", paste_line), "V_usable"}}};
  const std::array<const char*, 8> parts{"V_joint", "V_out",  "V_round", "V_waste",
                                         "V_own",   "V_more", "V_over",  "V_residue"};
  std::size_t index = 0;
  for (const char* letters : parts) need.tells.push_back({amount_at(index++), letters});
  reasons.push_back({fmt::format("order.{}.need", nozzle_line),
                     "mixer nozzles for the run of boats",
                     nozzles.release(),
                     {{fmt::format("order.{}.need", nozzle_line), "n_nozzles"},
                      {fmt::format("order.{}.packs", nozzle_line), "n_nozzles"},
                      {amount_at(index), "n_own"},
                      {amount_at(index + 1), "n_more"}}});
  reasons.push_back(std::move(need));
}

/// One kind of piece, by its place among them: what its line and allowances tell.
std::vector<Told> told_of_pieces(std::size_t kind, bool boxed) {
  const std::string line = fmt::format("order.{}.", first_fastener_line + kind);
  const std::size_t allowance = first_fastener_allowance + 3 * kind;
  std::vector<Told> tells{{line + "need", "n_need"},
                          {line + "packs", boxed ? "n_boxes" : "n_need"},
                          {amount_at(allowance), "n_used"},
                          {amount_at(allowance + 1), "n_spare"},
                          {amount_at(allowance + 2), "n_over"}};
  if (boxed) tells.push_back({line + "pack_size", "n_box"});
  return tells;
}

/// Fasteners by length, and what goes with the bolts.
void add_pieces(Explanations& reasons, const Joint& joint, const Schedule& schedule) {
  const auto pieces = fastener_pieces(joint.fastener, schedule);
  const double used =
      static_cast<double>(joint.order->boats * schedule.stations.size());
  double ordered = 0;
  for (std::size_t kind = 0; kind < pieces.size(); ++kind) {
    const FastenerPieces& one = pieces[kind];
    const bool boxed = one.with_a_bolt == 0;
    WrittenWorking work;
    if (boxed)
      ordered += pieces_needed(work, *joint.order, one.in_a_boat, one.box).need.value();
    else
      hardware_needed(work, used, ordered, one.with_a_bolt);
    reasons.push_back({fmt::format("order.{}.need", first_fastener_line + kind),
                       "pieces for the run of boats: " + one.item, work.release(),
                       told_of_pieces(kind, boxed)});
  }
}

void add_money(Explanations& reasons, const Order& order) {
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    const OrderLine& line = order.lines[i];
    if (!line.price) continue;
    WrittenWorking work;
    line_total(work, static_cast<double>(line.packs), *line.price);
    const std::string at = fmt::format("order.{}.total", i);
    reasons.push_back(
        {at, "what " + line.item + " costs", work.release(), {{at, "C"}}});
  }
  if (!order.total) return;
  WrittenWorking all, one;
  order_total(all, order.lines);
  total_of_a_boat(one, *order.total, order.boats);
  reasons.push_back({"order_total",
                     "what the order costs",
                     all.release(),
                     {{"order_total", "C_all"}}});
  reasons.push_back({"order_per_boat",
                     "what one boat's share of the order costs",
                     one.release(),
                     {{"order_per_boat", "C_boat"}}});
}

void add_shelf(Explanations& reasons,
               const Joint& joint,
               const AdhesivePlan& adhesive,
               const Order& order) {
  if (!order.shelf) return;
  WrittenWorking work;
  shelf_deliveries(work, *joint.adhesive, adhesive.nominal, *joint.order,
                   order.lines.front().packs);
  reasons.push_back({"order_shelf.deliveries",
                     "deliveries that are used up before they expire",
                     work.release(),
                     {{"order_shelf.boats", "n_shelf"},
                      {"order_shelf.packs", "n_most"},
                      {"order_shelf.deliveries", "n_times"}}});
}

}  // namespace

Explanations order_reasons(const Joint& joint,
                           const AdhesivePlan& adhesive,
                           const Schedule& schedule,
                           const Order& order) {
  Explanations reasons;
  add_adhesive(reasons,
               {*joint.adhesive, adhesive.nominal, order.boats, guns_of(joint)});
  add_pieces(reasons, joint, schedule);
  add_shelf(reasons, joint, adhesive, order);
  add_money(reasons, order);
  return reasons;
}

}  // namespace sheerlap

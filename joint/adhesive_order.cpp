#include "joint/adhesive_order.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/adhesive_needs.h"
#include "joint/order_workings.h"
#include "joint/shelf_needs.h"

namespace sheerlap {
namespace {

constexpr const char* part_packs_begun = "part packs begun with a fresh nozzle";

std::optional<double> times(std::optional<double> price, std::size_t packs) {
  if (!price) return std::nullopt;
  PlainWorking work;
  return line_total(work, static_cast<double>(packs), *price);
}

}  // namespace

OrderPart adhesive_order(const Adhesive& adhesive,
                         const AdhesiveAmounts& amounts,
                         std::size_t boats,
                         std::size_t guns) {
  assert(boats >= 1 && guns >= 1);
  const AdhesiveRun run{adhesive, amounts, boats, guns};
  PlainWorking work;
  const auto nozzle_need = nozzles_needed(work, run);
  const auto needs =
      adhesive_needed(work, run, nozzle_need.boat_by_boat, nozzle_need.for_part_packs);
  const auto nozzles = static_cast<std::size_t>(nozzle_need.all);
  const auto boat_by_boat = static_cast<std::size_t>(nozzle_need.boat_by_boat);
  const std::size_t for_part_packs = nozzles - boat_by_boat;
  const double purge = adhesive.nozzle_purge.in_ml();
  OrderPart part;
  const auto add = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back({adhesive.name, what, amount, "ml", std::move(basis)});
  };
  add("joint volume", needs.joint, fmt::format("{} boats", boats));
  add("squeeze-out", needs.squeeze_out,
      fmt::format("{:g} % of the joint volume", 100 * adhesive.squeeze_out));
  add("bead rounding", needs.rounding,
      "up to the bead sizes; the corners' own volume off");
  add("waste", needs.waste,
      fmt::format("{:g} % of what is laid", 100 * adhesive.waste));
  add("nozzle purge", needs.purge,
      fmt::format("{} nozzles, {:g} ml each", boat_by_boat, purge));
  add(part_packs_begun, needs.part_packs,
      fmt::format("{} nozzles more, {:g} ml each", for_part_packs, purge));
  const auto packs = static_cast<std::size_t>(needs.packs);
  add("pack rounding", needs.pack_rounding,
      "up to whole packs, once for the run: an opened pack is kept for the next boat");
  add("residue in the packs", needs.residue,
      fmt::format("{} packs, {:g} of {:g} ml each do not come out", packs,
                  (adhesive.pack - adhesive.pack_usable).in_ml(),
                  adhesive.pack.in_ml()));
  part.lines.push_back({adhesive.name, needs.need, "ml", adhesive.pack_usable.in_ml(),
                        packs, adhesive.pack_price, times(adhesive.pack_price, packs)});
  part.allowances.push_back(
      {"mixer nozzle", "one a pack", static_cast<double>(boat_by_boat), "pieces",
       fmt::format("{} a boat, {} boats: each boat starts with a fresh one",
                   amounts.nozzles, boats)});
  part.allowances.push_back(
      {"mixer nozzle", part_packs_begun, static_cast<double>(for_part_packs), "pieces",
       fmt::format("{} fresh packs and, from boat to boat, a part pack on each of {} "
                   "{}: {} in all",
                   nozzles - guns * (boats - 1), guns, guns == 1 ? "gun" : "guns",
                   nozzles)});
  part.lines.push_back({"mixer nozzle", static_cast<double>(nozzles), "pieces", 1,
                        nozzles, adhesive.nozzle_price,
                        times(adhesive.nozzle_price, nozzles)});
  return part;
}

std::optional<ShelfCap> shelf_cap(const Adhesive& adhesive,
                                  const AdhesiveAmounts& amounts,
                                  const OrderRules& rules,
                                  std::size_t packs) {
  if (!adhesive.shelf_life || !rules.boats_a_month) return std::nullopt;
  ShelfCap cap;
  PlainWorking work;
  const auto need = shelf_deliveries(work, adhesive, amounts, rules, packs);
  cap.boats = need.boats;
  cap.packs = static_cast<std::size_t>(need.packs);
  cap.deliveries = static_cast<std::size_t>(need.deliveries);
  return cap;
}

}  // namespace sheerlap

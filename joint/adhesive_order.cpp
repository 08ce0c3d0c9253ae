#include "joint/adhesive_order.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

#include "joint/whole_packs.h"

namespace sheerlap {
namespace {

constexpr double days_a_month = 365.25 / 12;
constexpr const char* part_packs_begun = "part packs begun with a fresh nozzle";

std::optional<double> times(std::optional<double> price, std::size_t packs) {
  if (!price) return std::nullopt;
  return *price * static_cast<double>(packs);
}

/// The nozzles of a run; see adhesive_order.
std::size_t nozzles_of(const Adhesive& adhesive,
                       const AdhesiveAmounts& amounts,
                       std::size_t boats,
                       std::size_t guns) {
  const std::size_t part_packs = guns * (boats - 1);
  const double purge = adhesive.nozzle_purge.in_ml();
  const double laid =
      static_cast<double>(boats) * amounts.bead.in_ml() * (1 + adhesive.waste);
  const std::size_t packs = whole_packs(laid + static_cast<double>(part_packs) * purge,
                                        adhesive.pack_usable.in_ml() - purge);
  return std::max(packs + part_packs, boats * amounts.nozzles);
}

}  // namespace

OrderPart adhesive_order(const Adhesive& adhesive,
                         const AdhesiveAmounts& amounts,
                         std::size_t boats,
                         std::size_t guns) {
  assert(boats >= 1 && guns >= 1);
  const auto run = static_cast<double>(boats);
  const double joint = run * amounts.joint.in_ml();
  const double bead = run * amounts.bead.in_ml();
  const double squeeze_out = joint * adhesive.squeeze_out;
  const std::size_t nozzles = nozzles_of(adhesive, amounts, boats, guns);
  const std::size_t boat_by_boat = boats * amounts.nozzles;
  const std::size_t for_part_packs = nozzles - boat_by_boat;
  const double purge = adhesive.nozzle_purge.in_ml();
  OrderPart part;
  double need = 0;
  const auto add = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back({adhesive.name, what, amount, "ml", std::move(basis)});
    need += amount;
  };
  add("joint volume", joint, fmt::format("{} boats", boats));
  add("squeeze-out", squeeze_out,
      fmt::format("{:g} % of the joint volume", 100 * adhesive.squeeze_out));
  add("bead rounding", bead - joint - squeeze_out,
      "up to the bead sizes; the corners' own volume off");
  add("waste", bead * adhesive.waste,
      fmt::format("{:g} % of what is laid", 100 * adhesive.waste));
  add("nozzle purge", static_cast<double>(boat_by_boat) * purge,
      fmt::format("{} nozzles, {:g} ml each", boat_by_boat, purge));
  add(part_packs_begun, static_cast<double>(for_part_packs) * purge,
      fmt::format("{} nozzles more, {:g} ml each", for_part_packs, purge));
  const double needed = need;
  const std::size_t packs = whole_packs(needed, adhesive.pack_usable.in_ml());
  const auto opened = static_cast<double>(packs);
  add("pack rounding", opened * adhesive.pack_usable.in_ml() - needed,
      "up to whole packs, once for the run: an opened pack is kept for the next boat");
  add("residue in the packs", opened * (adhesive.pack - adhesive.pack_usable).in_ml(),
      fmt::format("{} packs, {:g} of {:g} ml each do not come out", packs,
                  (adhesive.pack - adhesive.pack_usable).in_ml(),
                  adhesive.pack.in_ml()));
  part.lines.push_back({adhesive.name, needed, "ml", adhesive.pack_usable.in_ml(),
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
  cap.boats = *rules.boats_a_month * adhesive.shelf_life->in_days() / days_a_month;
  cap.packs = packs;
  cap.deliveries = 1;
  if (static_cast<double>(rules.boats) <= cap.boats) return cap;
  const double used_up =
      std::floor(cap.boats * (amounts.boat / adhesive.pack_usable) * (1 + 1e-9));
  const auto most = static_cast<double>(packs);
  cap.packs = static_cast<std::size_t>(std::clamp(used_up, 1.0, std::max(1.0, most)));
  cap.deliveries = (packs + cap.packs - 1) / cap.packs;
  return cap;
}

}  // namespace sheerlap

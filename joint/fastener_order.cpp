#include "joint/fastener_order.h"

#include <fmt/format.h>

#include <map>
#include <string_view>
#include <utility>

#include "joint/whole_packs.h"

namespace sheerlap {
namespace {

/// @returns  how many are ordered, spares included
double add(OrderPart& part, const FastenerPieces& pieces, const OrderRules& rules) {
  const auto used = static_cast<double>(rules.boats * pieces.in_a_boat);
  const auto need = static_cast<double>(whole_packs(used * (1 + rules.spare), 1));
  const auto box = static_cast<double>(pieces.box);
  const std::size_t boxes = whole_packs(need, box);
  const auto line = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back({pieces.item, what, amount, "pieces", std::move(basis)});
  };
  line("in the boats", used,
       fmt::format("{} a boat, {} boats", pieces.in_a_boat, rules.boats));
  line("spares", need - used, fmt::format("{:g} %, whole pieces", 100 * rules.spare));
  line("box rounding", static_cast<double>(boxes) * box - need,
       fmt::format("up to whole boxes of {}, once for the run", pieces.box));
  std::optional<double> total;
  if (pieces.box_price) total = *pieces.box_price * static_cast<double>(boxes);
  part.lines.push_back(
      {pieces.item, need, "pieces", box, boxes, pieces.box_price, total});
  return need;
}

std::string_view number_word(std::size_t number) { return number == 1 ? "one" : "two"; }

void add_hardware(OrderPart& part,
                  const FastenerPieces& hardware,
                  double bolts_used,
                  double bolts_ordered) {
  const auto each = static_cast<double>(hardware.with_a_bolt);
  const double need = bolts_ordered * each;
  const auto line = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back(
        {hardware.item, what, amount, "pieces", std::move(basis)});
  };
  const std::string basis =
      fmt::format("{} {} a bolt", number_word(hardware.with_a_bolt), hardware.words);
  line("in the boats", bolts_used * each, basis);
  line("spares", need - bolts_used * each, basis + ", for the spare bolts");
  line("box rounding", 0, "by the piece");
  part.lines.push_back({hardware.item, need, "pieces", 1,
                        static_cast<std::size_t>(need), std::nullopt, std::nullopt});
}

FastenerPieces hardware(const std::string& item,
                        const char* words,
                        std::size_t with_a_bolt,
                        std::size_t bolts) {
  FastenerPieces pieces;
  pieces.item = item;
  pieces.in_a_boat = with_a_bolt * bolts;
  pieces.with_a_bolt = with_a_bolt;
  pieces.words = words;
  return pieces;
}

}  // namespace

std::vector<FastenerPieces> fastener_pieces(const FastenerChoice& choice,
                                            const Schedule& schedule) {
  const FastenerSpec& spec = schedule.fastener;
  std::map<Length, std::size_t> by_length;
  std::size_t unserved = 0;
  for (const DrillStation& station : schedule.stations)
    station.length ? ++by_length[*station.length] : ++unserved;
  std::vector<FastenerPieces> pieces;
  for (const auto& [length, count] : by_length)
    pieces.push_back({fastener_name(spec, length), count, choice.box.value_or(1),
                      choice.box_price, true});
  if (unserved > 0)
    pieces.push_back(
        {fastener_name(spec) + ", of a length not in stock", unserved, 1, {}});
  const std::size_t bolts = schedule.stations.size();
  if (spec.kind != FastenerKind::Bolt || bolts == 0) return pieces;
  pieces.push_back(hardware("nut " + spec.size, "nut", 1, bolts));
  if (spec.washers > 0)
    pieces.push_back(hardware("washer " + spec.size,
                              spec.washers == 1 ? "washer" : "washers", spec.washers,
                              bolts));
  return pieces;
}

OrderPart fastener_order(const FastenerChoice& choice,
                         const Schedule& schedule,
                         const OrderRules& rules) {
  const auto used = static_cast<double>(rules.boats * schedule.stations.size());
  OrderPart part;
  double ordered = 0;
  for (const FastenerPieces& pieces : fastener_pieces(choice, schedule)) {
    if (pieces.with_a_bolt == 0)
      ordered += add(part, pieces, rules);
    else
      add_hardware(part, pieces, used, ordered);
  }
  return part;
}

}  // namespace sheerlap

#include "joint/fastener_order.h"

#include <fmt/format.h>

#include <map>
#include <string_view>
#include <utility>

#include "joint/order_workings.h"

namespace sheerlap {
namespace {

/// @returns  how many are ordered, spares included
double add(OrderPart& part, const FastenerPieces& pieces, const OrderRules& rules) {
  PlainWorking work;
  const auto needed = pieces_needed(work, rules, pieces.in_a_boat, pieces.box);
  const double need = needed.need;
  const auto line = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back({pieces.item, what, amount, "pieces", std::move(basis)});
  };
  line("in the boats", needed.used,
       fmt::format("{} a boat, {} boats", pieces.in_a_boat, rules.boats));
  line("spares", needed.spares, fmt::format("{:g} %, whole pieces", 100 * rules.spare));
  line("box rounding", needed.box_rounding,
       fmt::format("up to whole boxes of {}, once for the run", pieces.box));
  std::optional<double> total;
  if (pieces.box_price) total = line_total(work, needed.boxes, *pieces.box_price);
  part.lines.push_back({pieces.item, need, "pieces", static_cast<double>(pieces.box),
                        static_cast<std::size_t>(needed.boxes), pieces.box_price,
                        total});
  return need;
}

std::string_view number_word(std::size_t number) { return number == 1 ? "one" : "two"; }

void add_hardware(OrderPart& part,
                  const FastenerPieces& hardware,
                  double bolts_used,
                  double bolts_ordered) {
  PlainWorking work;
  const auto needed =
      hardware_needed(work, bolts_used, bolts_ordered, hardware.with_a_bolt);
  const auto line = [&](const char* what, double amount, std::string basis) {
    part.allowances.push_back(
        {hardware.item, what, amount, "pieces", std::move(basis)});
  };
  const std::string basis =
      fmt::format("{} {} a bolt", number_word(hardware.with_a_bolt), hardware.words);
  line("in the boats", needed.used, basis);
  line("spares", needed.spares, basis + ", for the spare bolts");
  line("box rounding", needed.box_rounding, "by the piece");
  part.lines.push_back({hardware.item, needed.need, "pieces", 1,
                        static_cast<std::size_t>(needed.boxes), std::nullopt,
                        std::nullopt});
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

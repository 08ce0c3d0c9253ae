#pragma once

#include <string>
#include <vector>

#include "joint/joint.h"
#include "joint/order_lines.h"
#include "joint/reasons/working.h"
#include "joint/whole_packs.h"

namespace sheerlap {

/// What a line costs.
template <class Working>
auto line_total(Working& work, double packs, double price) {
  const auto n = work.given({"n_packs", "packs", "1"}, packs,
                            Origin::of_joint("the line's packs"));
  const auto c = work.given({"c", "price of a pack", "money"}, price,
                            Origin::of_file("the line's price"));
  return work.figure({"C", "the line's total", "money", "derived: packs times price",
                      "whole packs, no discount"},
                     n * c);
}

/// Lines of a total added; a line without a price adds nothing.
template <class Working>
typename Working::Number order_total(Working& work,
                                     const std::vector<OrderLine>& lines) {
  typename Working::Number sum(0);
  std::size_t number = 0;
  for (const OrderLine& line : lines) {
    if (!line.total) continue;
    const std::string letters = "C_" + std::to_string(++number);
    const auto term = work.given({letters, line.item, "money"}, *line.total,
                                 Origin::of_joint("order: `total`"));
    sum = number == 1 ? term : sum + term;
  }
  return work.figure({"C_all", "the order's total", "money",
                      "derived: the lines that have a price", "whole packs and boxes"},
                     sum);
}

template <class Working>
auto total_of_a_boat(Working& work, double total, std::size_t boats) {
  const auto C = work.given({"C_all", "the order's total", "money"}, total,
                            Origin::of_joint("order_total"));
  const auto n = work.given({"n_boats", "boats", "1"}, static_cast<double>(boats),
                            Origin::of_file("order.boats"));
  return work.figure(
      {"C_boat", "of it for one boat", "money", "derived: the total over the boats",
       "what is left over at the end is paid by these boats"},
      C / n);
}

/// What the pieces of one kind come to.
template <class Number>
struct PieceNeed {
  Number used, need, spares, boxes, box_rounding;
};

/// Pieces for a run of boats, with spares and in whole boxes.
/// @param in_a_boat  pieces
/// @param box        pieces in one
template <class Working>
PieceNeed<typename Working::Number> pieces_needed(Working& work,
                                                  const OrderRules& rules,
                                                  std::size_t in_a_boat,
                                                  std::size_t box) {
  const auto n = work.given({"n_boats", "boats", "1"}, static_cast<double>(rules.boats),
                            Origin::of_file("order.boats"));
  const auto one =
      work.given({"n_1", "pieces in one boat", "1"}, static_cast<double>(in_a_boat),
                 Origin::of_joint("schedule: holes of this length"));
  const auto spare = work.given({"f", "spares, as a share", "1"}, rules.spare,
                                Origin::of_file("order.spare"));
  const auto n_box =
      work.given({"n_box", "pieces in a box", "1"}, static_cast<double>(box),
                 Origin::of_file("fastener.box"));
  const auto used = work.figure({"n_used", "in the boats", "pieces",
                                 "derived: one boat, times boats", "as laid out"},
                                n * one);
  const auto need =
      work.figure({"n_need", "with spares", "pieces", "derived: whole pieces",
                   "an excess under 1e-9 is rounding"},
                  rounded_up(used * (1 + spare)));
  const auto boxes = work.figure(
      {"n_boxes", "boxes", "1", "derived: whole boxes, rounded up once for the run",
       "an excess under 1e-9 is rounding"},
      rounded_up(need / n_box));
  return {used, need,
          work.figure({"n_spare", "spares", "pieces", "derived: the rest",
                       "spares for the run together"},
                      need - used),
          boxes,
          work.figure({"n_over", "what whole boxes add", "pieces",
                       "derived: boxes less the need", "one box size"},
                      boxes * n_box - need)};
}

/// Nuts or washers for a run of boats.
template <class Working>
PieceNeed<typename Working::Number> hardware_needed(Working& work,
                                                    double bolts_used,
                                                    double bolts_ordered,
                                                    std::size_t with_a_bolt) {
  const auto bolts = work.given({"n_bolts", "bolts in the boats", "1"}, bolts_used,
                                Origin::of_joint("the order's bolts"));
  const auto all = work.given({"n_ordered", "bolts with spares", "1"}, bolts_ordered,
                              Origin::of_joint("the order's bolts"));
  const auto each =
      work.given({"n_each", "with a bolt", "1"}, static_cast<double>(with_a_bolt),
                 Origin::of_joint("one nut; washers as the bolt's table has them"));
  const auto used = work.figure(
      {"n_used", "in the boats", "pieces", "derived: with each bolt", "as laid out"},
      bolts * each);
  const auto need =
      work.figure({"n_need", "with spares", "pieces",
                   "derived: with each bolt, spare ones too", "bought by the piece"},
                  all * each);
  return {used, need,
          work.figure({"n_spare", "spares", "pieces", "derived: the rest",
                       "for the spare bolts"},
                      need - used),
          need,
          work.figure({"n_over", "what whole boxes add", "pieces",
                       "derived: bought by the piece", "no boxes"},
                      0 * need)};
}

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "joint/joint.h"
#include "joint/order_lines.h"
#include "joint/schedule.h"

namespace sheerlap {

/// One kind of piece that a boat takes: a fastener of one length, or what goes with the
/// bolts.
struct FastenerPieces {
  std::string item;
  std::size_t in_a_boat = 0;
  std::size_t box = 1;
  std::optional<double> box_price;
  bool boxed = false;           ///< bought in the boxes of the joint file
  std::size_t with_a_bolt = 0;  ///< for nuts and washers: with each, spare bolts too
  const char* words = "";       ///< for those: "nut", "washers"
};

/// The pieces of one boat: fasteners by length, those that no length in stock serves,
/// and for bolts their nuts and washers.
///
/// @param choice  for boxes and prices
std::vector<FastenerPieces> fastener_pieces(const FastenerChoice& choice,
                                            const Schedule& schedule);

/// Fasteners by length for a run of boats, with spares and in whole boxes, and for
/// bolts their nuts and washers. Stations that no length in stock serves have a line of
/// their own.
///
/// @param choice  for boxes and prices
OrderPart fastener_order(const FastenerChoice& choice,
                         const Schedule& schedule,
                         const OrderRules& rules);

}  // namespace sheerlap

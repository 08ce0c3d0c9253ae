#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerlap {

/// One line of what goes into an item's order, so that a buyer can change it.
///
/// An item's lines before its rounding sum to its need; the rounding brings the sum to
/// packs x pack_size. A line after that, as for what stays in a pack, is bought with
/// the packs and is no part of what they give.
struct Allowance {
  std::string item;  ///< the order line it belongs to
  std::string what;  ///< "squeeze-out", "spares" ...
  double amount = 0;
  std::string unit;   ///< "ml", "pieces"
  std::string basis;  ///< "10 % of the joint volume"
};

/// One thing to buy, for the whole run of boats.
struct OrderLine {
  std::string item;
  double need = 0;  ///< in `unit`, for the run
  std::string unit;
  double pack_size = 1;  ///< in `unit`
  std::size_t packs = 0;
  std::optional<double> price;  ///< a pack
  std::optional<double> total;
};

/// Some of the lines of an order, with their allowances.
struct OrderPart {
  std::vector<OrderLine> lines;
  std::vector<Allowance> allowances;
};

}  // namespace sheerlap

#pragma once

#include <string>
#include <string_view>

#include "joint/fasteners.h"

namespace sheerlap {

/// A number of a table (mm), and whether it was read there or comes from memory.
struct Cell {
  double mm = 0;
  bool from_memory = false;
};

constexpr Cell seen(double mm) { return {mm, false}; }
constexpr Cell remembered(double mm) { return {mm, true}; }
constexpr double inches(double value) { return 25.4 * value; }

/// Adds a value of a table to a fastener's, and returns it.
inline Length take(FastenerSpec& spec,
                   std::string_view what,
                   Cell cell,
                   std::string_view source) {
  std::string where(source);
  if (cell.from_memory) where.append(": ").append(memory_note);
  spec.values.push_back({std::string(what), Length::mm(cell.mm), std::move(where)});
  return Length::mm(cell.mm);
}

}  // namespace sheerlap

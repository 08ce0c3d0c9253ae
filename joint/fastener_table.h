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
  spec.values.push_back(
      {std::string(what), Length::mm(cell.mm), std::move(where), false});
  return Length::mm(cell.mm);
}

/// As `take`, for the value that is the pilot hole.
inline Length take_pilot(FastenerSpec& spec, Cell cell, std::string_view source) {
  const Length pilot = take(spec, "pilot hole in the hull", cell, source);
  spec.values.back().is_pilot = true;
  return pilot;
}

}  // namespace sheerlap

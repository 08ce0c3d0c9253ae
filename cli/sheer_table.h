#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "geometry/result.h"
#include "joint/length_text.h"
#include "joint/sheer.h"

namespace sheerlap {

/// A column of the sheer table that stands in place of a constant of [lap].
struct OffsetColumn {
  std::string_view name;      ///< of the column
  std::string_view constant;  ///< the key of [lap]
  Length FlangeOffsets::*value;
};

inline constexpr std::array offset_columns{
    OffsetColumn{"lap", "depth", &FlangeOffsets::lap},
    OffsetColumn{"hull_top", "hull_top", &FlangeOffsets::hull_top},
    OffsetColumn{"hull_low", "hull_low", &FlangeOffsets::hull_low},
    OffsetColumn{"lip_top", "lip_top", &FlangeOffsets::lip_top},
    OffsetColumn{"lip_low", "lip_low", &FlangeOffsets::lip_low}};

/// What a sheer table says, and what is wrong with it.
struct SheerTable {
  /// Zero where `given` is false, NaN where a cell could not be read.
  std::vector<SheerRow> rows;
  std::array<bool, offset_columns.size()> given{};  ///< which offsets have a column
  std::size_t header_line = 1;
  std::vector<std::size_t> row_lines;
  Errors errors;  ///< at "sheer.header" or "sheer.row[N]"
};

/// The sheer table that a CSV text holds (RFC 4180: commas, cells in double quotes
/// where need be), with a header line.
///
/// Empty lines say nothing. A cell is a length as `length_from_text` reads it; it
/// stands on one line.
///
/// @param text  UTF-8
/// @param unit  of bare numbers
SheerTable read_sheer_table(std::string_view text, LengthUnit unit);

}  // namespace sheerlap

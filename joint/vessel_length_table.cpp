#include "joint/vessel_length_table.h"

#include <algorithm>
#include <array>

namespace sheerlap {
namespace {

/// One row as it is remembered: feet, then inches.
struct Row {
  double vessel_ft, overlap_in, diameter_in, spacing_in;
};

constexpr std::array<Row, 10> rows{{
    {30, 2.5, 0.25, 6.0},
    {40, 3.0, 0.30, 6.5},
    {50, 3.5, 0.35, 7.0},
    {60, 4.0, 0.40, 7.5},
    {70, 4.5, 0.45, 8.0},
    {80, 5.0, 0.50, 8.5},
    {90, 5.5, 0.55, 9.0},
    {100, 6.0, 0.60, 9.5},
    {110, 6.5, 0.65, 10.0},
    {120, 7.0, 0.70, 10.5},
}};

}  // namespace

std::optional<VesselLengthRow> vessel_length_row(Length vessel) {
  constexpr double rounding_ft = 1e-9;
  const double feet = vessel.in_inches() / 12;
  if (!(feet >= rows.front().vessel_ft - rounding_ft &&
        feet <= rows.back().vessel_ft + rounding_ft))
    return std::nullopt;
  const auto after =
      std::find_if(rows.begin() + 1, rows.end() - 1,
                   [&](const Row& row) { return feet <= row.vessel_ft; });
  const Row& low = *(after - 1);
  const Row& high = *after;
  const double share = (feet - low.vessel_ft) / (high.vessel_ft - low.vessel_ft);
  const auto between = [&](double Row::*column) {
    return Length::inches(low.*column + share * (high.*column - low.*column));
  };
  return VesselLengthRow{between(&Row::overlap_in), between(&Row::diameter_in),
                         between(&Row::spacing_in)};
}

}  // namespace sheerlap

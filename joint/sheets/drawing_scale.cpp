#include "joint/sheets/drawing_scale.h"

#include <fmt/format.h>

#include <array>

#include "joint/documents/number_style.h"

namespace sheerlap {
namespace {

/// Ascending, as so many times smaller than the boat.
constexpr std::array metric_series{0.1, 0.2, 0.5, 1.,  2.,  5.,   10.,  15.,  20.,
                                   25., 30., 40., 50., 75., 100., 150., 200., 500.};
constexpr std::array inch_series{0.125, 0.25, 0.5, 1.,  2.,  4.,   8.,   12., 16.,
                                 24.,   32.,  48., 64., 96., 128., 192., 384.};

/// What so many inches to the foot are called; empty where no rule has them.
std::string inches_to_the_foot(double boat) {
  const std::pair<double, const char*> rules[] = {
      {12, "1"},    {16, "3/4"}, {24, "1/2"},   {32, "3/8"},  {48, "1/4"},
      {64, "3/16"}, {96, "1/8"}, {128, "3/32"}, {192, "1/16"}};
  for (const auto& [reduction, inches] : rules)
    if (reduction == boat) return fmt::format(" ({} in = 1 ft)", inches);
  return "";
}

DrawingScale scale_of(double reduction) {
  if (reduction >= 1) return {1, reduction};
  return {1 / reduction, 1};
}

}  // namespace

std::string DrawingScale::words(LengthUnit unit) const {
  return fmt::format(
      "{}:{}{}", at_most_decimals(paper, 2), at_most_decimals(boat, 2),
      unit == LengthUnit::Inches && paper == 1 ? inches_to_the_foot(boat) : "");
}

DrawingScale largest_scale(LengthUnit unit, const std::function<bool(double)>& fits) {
  const auto among = [&](const auto& series) {
    for (const double reduction : series)
      if (fits(1 / reduction)) return scale_of(reduction);
    return scale_of(series.back());
  };
  return unit == LengthUnit::Millimetres ? among(metric_series) : among(inch_series);
}

}  // namespace sheerlap

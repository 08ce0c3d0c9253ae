#include "joint/records/record_charts.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

/// Whether two means leave less scatter than a line; their place is a figure more.
bool step_is_nearer(const PlaceChart& chart) {
  const auto count = static_cast<double>(chart.series.gaps_mm.size());
  return chart.step->scatter * std::sqrt((count - 2) / (count - 3)) <
         chart.drift->scatter;
}

PlaceChart place_chart(GapSeries series, const GapWindow& window, double level) {
  PlaceChart result;
  result.series = std::move(series);
  const std::vector<double>& gaps = result.series.gaps_mm;
  result.chart = individuals_chart(gaps);
  if (can_tell(result)) {
    result.drift = drift_of(gaps, rounding_scatter_mm);
    result.step = step_of(gaps, rounding_scatter_mm);
    result.capability = capability_of(gaps, window);
  }
  result.drifts = result.drift && result.drift->chance < level;
  result.steps = result.step && result.step->chance < level;
  result.more_step = result.drift && result.step && step_is_nearer(result);
  result.outside =
      static_cast<std::size_t>(std::count_if(gaps.begin(), gaps.end(), [&](double gap) {
        return gap < window.low || gap > window.high;
      }));
  return result;
}

std::optional<Correlation> gap_and_litres(const std::vector<BoatFigures>& boats) {
  std::vector<FigurePair> pairs;
  for (const BoatFigures& boat : boats)
    if (boat.mean_gap && boat.litres)
      pairs.push_back({boat.mean_gap->in_mm(), *boat.litres});
  return correlation_of(pairs);
}

}  // namespace

bool can_tell(const PlaceChart& chart) {
  return chart.series.gaps_mm.size() >= boats_to_tell;
}

RecordCharts record_charts(RecordSeries record) {
  RecordCharts result;
  const auto count_of = [&](std::size_t boats) {
    return static_cast<std::size_t>(
        std::count_if(record.series.begin(), record.series.end(),
                      [&](const auto& one) { return one.gaps_mm.size() >= boats; }));
  };
  result.too_short = record.series.size() - count_of(2);
  const auto telling = static_cast<double>(count_of(boats_to_tell));
  result.level = telling > 0 ? false_alarms / (2 * telling) : 0;
  const GapWindow window{record.gap_min.in_mm(), record.gap_max.in_mm()};
  for (GapSeries& series : record.series)
    if (series.gaps_mm.size() >= 2)
      result.charts.push_back(place_chart(std::move(series), window, result.level));
  result.title = std::move(record.title);
  result.gap_min = record.gap_min;
  result.gap_max = record.gap_max;
  result.gap_and_litres = gap_and_litres(record.boats);
  result.boats = std::move(record.boats);
  return result;
}

bool finds_change(const RecordCharts& charts) {
  return std::any_of(
      charts.charts.begin(), charts.charts.end(),
      [](const PlaceChart& chart) { return chart.drifts || chart.steps; });
}

}  // namespace sheerlap

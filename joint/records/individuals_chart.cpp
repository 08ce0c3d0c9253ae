#include "joint/records/individuals_chart.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace sheerlap {
namespace {

double mean_of(const std::vector<double>& values, std::size_t count) {
  const auto end = values.begin() + static_cast<std::ptrdiff_t>(count);
  return std::accumulate(values.begin(), end, 0.0) / static_cast<double>(count);
}

void add_beyond(IndividualsChart& chart, const std::vector<double>& values) {
  for (std::size_t i = 0; i < values.size(); ++i)
    if (values[i] < chart.low || values[i] > chart.high)
      chart.signals.push_back({ChartRule::BeyondLimit, i, i});
  for (std::size_t i = 0; i < chart.ranges.size(); ++i)
    if (chart.ranges[i] > chart.range_high)
      chart.signals.push_back({ChartRule::RangeBeyondLimit, i, i + 1});
}

int side_of(double value, double mean) { return (value > mean) - (value < mean); }

void add_one_side(IndividualsChart& chart, const std::vector<double>& values) {
  for (std::size_t first = 0; first < values.size();) {
    const int side = side_of(values[first], chart.mean);
    std::size_t end = first + 1;
    while (end < values.size() && side_of(values[end], chart.mean) == side) ++end;
    if (side != 0 && end - first >= one_side_run)
      chart.signals.push_back({ChartRule::OneSide, first, end - 1});
    first = end;
  }
}

void add_trends(IndividualsChart& chart, const std::vector<double>& values) {
  for (std::size_t first = 0; first + 1 < values.size();) {
    const int way = side_of(values[first + 1], values[first]);
    std::size_t last = first + 1;
    while (last + 1 < values.size() && side_of(values[last + 1], values[last]) == way)
      ++last;
    if (way != 0 && last - first + 1 >= trend_run)
      chart.signals.push_back(
          {way > 0 ? ChartRule::Rising : ChartRule::Falling, first, last});
    first = last;
  }
}

}  // namespace

IndividualsChart individuals_chart(const std::vector<double>& values) {
  assert(values.size() >= 2);
  IndividualsChart chart;
  chart.base = std::min(values.size(), boats_for_limits);
  chart.ranges.reserve(values.size() - 1);
  for (std::size_t i = 1; i < values.size(); ++i)
    chart.ranges.push_back(std::abs(values[i] - values[i - 1]));
  chart.mean = mean_of(values, chart.base);
  chart.mean_range = mean_of(chart.ranges, chart.base - 1);
  chart.sigma = chart.mean_range / chart_factors::d2;
  chart.low = chart.mean - chart_factors::limit * chart.mean_range;
  chart.high = chart.mean + chart_factors::limit * chart.mean_range;
  chart.range_high = chart_factors::range_limit * chart.mean_range;
  add_beyond(chart, values);
  add_one_side(chart, values);
  add_trends(chart, values);
  return chart;
}

}  // namespace sheerlap

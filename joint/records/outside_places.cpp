#include "joint/records/outside_places.h"

#include <algorithm>
#include <cstdint>
#include <map>

namespace sheerlap {
namespace {

using LatestStates = std::map<std::int64_t, ReadingState>;

LatestStates latest_states(const RecordCharts& charts) {
  LatestStates latest;
  for (const PlaceChart& chart : charts.charts)
    for (const std::int64_t hull : chart.series.hulls) {
      const auto [at, is_new] = latest.try_emplace(hull, chart.series.state);
      if (!is_new) at->second = std::max(at->second, chart.series.state);
    }
  return latest;
}

}  // namespace

std::vector<OutsidePlace> outside_places(const RecordCharts& charts) {
  const LatestStates latest = latest_states(charts);
  const double low = charts.gap_min.in_mm();
  const double high = charts.gap_max.in_mm();
  std::vector<OutsidePlace> places;
  for (const PlaceChart& chart : charts.charts) {
    if (chart.outside == 0) continue;
    OutsidePlace place{&chart, 0, 0};
    for (std::size_t i = 0; i < chart.series.hulls.size(); ++i) {
      if (latest.at(chart.series.hulls[i]) != chart.series.state) continue;
      const double gap = chart.series.gaps_mm[i];
      ++place.boats;
      if (gap < low || gap > high) ++place.outside;
    }
    if (place.outside > 0) places.push_back(place);
  }
  std::stable_sort(places.begin(), places.end(),
                   [](const auto& a, const auto& b) { return a.outside > b.outside; });
  return places;
}

}  // namespace sheerlap

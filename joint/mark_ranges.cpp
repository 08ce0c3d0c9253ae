#include "joint/mark_ranges.h"

#include <cstddef>

namespace sheerlap {

std::string mark_ranges(const std::vector<DrillStation>& stations,
                        const std::function<bool(const DrillStation&)>& listed) {
  constexpr std::size_t least_range = 3;
  std::string text;
  const auto add = [&](const std::string& words) {
    text += (text.empty() ? "" : ", ") + words;
  };
  for (std::size_t first = 0; first < stations.size();) {
    std::size_t end = first;
    while (end < stations.size() && stations[end].side == stations[first].side &&
           listed(stations[end]))
      ++end;
    if (end - first >= least_range)
      add(stations[first].mark + "-" + stations[end - 1].mark);
    else
      for (std::size_t i = first; i < end; ++i) add(stations[i].mark);
    first = end == first ? first + 1 : end;
  }
  return text;
}

}  // namespace sheerlap

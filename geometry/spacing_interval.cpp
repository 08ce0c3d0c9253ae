#include "geometry/spacing_interval.h"

#include <algorithm>
#include <cstddef>

namespace sheerlap {

void append(std::vector<SpacingInterval>& intervals, SpacingInterval added) {
  if (!intervals.empty() && intervals.back().to_mm >= added.from_mm)
    intervals.back().to_mm = std::max(intervals.back().to_mm, added.to_mm);
  else
    intervals.push_back(added);
}

void join(std::vector<SpacingInterval>& intervals) {
  std::sort(intervals.begin(), intervals.end(), [](const auto& one, const auto& other) {
    return one.from_mm < other.from_mm;
  });
  std::size_t last = 0;
  for (std::size_t index = 1; index < intervals.size(); ++index) {
    if (intervals[index].from_mm <= intervals[last].to_mm)
      intervals[last].to_mm = std::max(intervals[last].to_mm, intervals[index].to_mm);
    else
      intervals[++last] = intervals[index];
  }
  if (!intervals.empty()) intervals.resize(last + 1);
}

std::vector<SpacingInterval> rest_of(SpacingInterval whole,
                                     const std::vector<SpacingInterval>& taken) {
  std::vector<SpacingInterval> rest;
  double from = whole.from_mm;
  bool open = true;  // whether `from` itself is left
  for (const SpacingInterval& part : taken) {
    if (part.to_mm < from) continue;
    if (part.from_mm > whole.to_mm) break;
    if (part.from_mm > from) rest.push_back({from, part.from_mm});
    from = std::max(from, part.to_mm);
    open = false;
  }
  if (from < whole.to_mm || open) rest.push_back({from, whole.to_mm});
  return rest;
}

}  // namespace sheerlap

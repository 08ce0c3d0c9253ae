#include "joint/documents/sparkline.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace sheerlap {

std::string sparkline(const std::vector<double>& values,
                      double low,
                      double high,
                      std::size_t width) {
  static constexpr std::array blocks{"\u2581", "\u2582", "\u2583", "\u2584",
                                     "\u2585", "\u2586", "\u2587", "\u2588"};
  assert(width >= 1);
  std::string line;
  const std::size_t groups = std::min(width, values.size());
  for (std::size_t group = 0; group < groups; ++group) {
    const std::size_t first = group * values.size() / groups;
    const std::size_t end = (group + 1) * values.size() / groups;
    double mean = 0;
    for (std::size_t i = first; i < end; ++i)
      mean += values[i] / static_cast<double>(end - first);
    const double share = high > low ? (mean - low) / (high - low) : 0.5;
    const double step = std::floor(share * static_cast<double>(blocks.size()));
    line += blocks[static_cast<std::size_t>(
        std::clamp(step, 0.0, static_cast<double>(blocks.size() - 1)))];
  }
  return line;
}

}  // namespace sheerlap

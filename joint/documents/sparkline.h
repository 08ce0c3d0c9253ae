#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlap {

/// A series as a line of block characters, eight heights from `low` to `high`; values
/// beyond them have the least or greatest height.
///
/// Where there are more values than `width`, neighbours are put together in `width`
/// groups as even as can be, and each group shows its mean.
///
/// @param width  >= 1
std::string sparkline(const std::vector<double>& values,
                      double low,
                      double high,
                      std::size_t width);

}  // namespace sheerlap

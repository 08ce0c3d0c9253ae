#pragma once

#include <cmath>
#include <cstddef>
#include <numbers>
#include <random>
#include <vector>

namespace sheerlap {

/// Normal values of mean 0 and standard deviation 1, the same on every machine.
inline std::vector<double> normal_values(std::mt19937_64& source, std::size_t count) {
  std::vector<double> values;
  const auto share = [&] {
    return (static_cast<double>(source() >> 11U) + 0.5) / 9007199254740992.0;
  };
  while (values.size() < count) {
    const double radius = std::sqrt(-2 * std::log(share()));
    values.push_back(radius * std::cos(2 * std::numbers::pi * share()));
  }
  return values;
}

}  // namespace sheerlap

#pragma once

#include <array>

namespace sheerlap {

/// Derivatives by central differences over nine points, for checks of differential
/// equations.
/// @accuracy  sixth order in `step` or better
struct Derivatives {
  double second = 0;
  double third = 0;
  double fourth = 0;
};

template <class Function>
Derivatives derivatives(const Function& function, double at, double step) {
  // derived: Taylor series about the middle point, as tabled everywhere
  constexpr std::array<double, 5> second = {-205. / 72, 8. / 5, -1. / 5, 8. / 315,
                                            -1. / 560};
  constexpr std::array<double, 5> third = {0, -61. / 30, 169. / 120, -3. / 10,
                                           7. / 240};
  constexpr std::array<double, 5> fourth = {91. / 8, -122. / 15, 169. / 60, -2. / 5,
                                            7. / 240};
  Derivatives result = {second[0] * function(at), 0, fourth[0] * function(at)};
  for (std::size_t i = 1; i < second.size(); ++i) {
    const double right = function(at + static_cast<double>(i) * step);
    const double left = function(at - static_cast<double>(i) * step);
    result.second += second[i] * (right + left);
    result.third += third[i] * (right - left);
    result.fourth += fourth[i] * (right + left);
  }
  result.second /= step * step;
  result.third /= step * step * step;
  result.fourth /= step * step * step * step;
  return result;
}

}  // namespace sheerlap

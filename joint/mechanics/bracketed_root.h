#pragma once

#include <functional>

namespace sheerlap {

/// Where a rising function crosses zero, between `low` and `high`.
/// @returns  the nearer end where it does not cross: `low` if it is nowhere below zero,
///           `high` if it is nowhere above
/// @accuracy 1e-14 of the root
double bracketed_root(const std::function<double(double)>& rising,
                      double low,
                      double high);

}  // namespace sheerlap

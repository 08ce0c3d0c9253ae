#pragma once

#include <cstddef>

namespace sheerlap {

/// `amount` in whole packs; an excess of less than 1e-9 of itself, which is rounding,
/// needs no further one.
///
/// @param amount  >= 0
/// @param pack    > 0, in the same unit
std::size_t whole_packs(double amount, double pack);

}  // namespace sheerlap

#pragma once

#include <cstddef>

#include "joint/reasons/term.h"

namespace sheerlap {

/// A number of packs in whole ones; an excess of less than 1e-9 of itself, which is
/// rounding, needs no further one. In a working it reads "ceil(...)".
double rounded_up(double packs);
Term rounded_up(const Term& packs);

/// `amount` in whole packs; an excess of less than 1e-9 of itself, which is rounding,
/// needs no further one.
///
/// @param amount  >= 0
/// @param pack    > 0, in the same unit
std::size_t whole_packs(double amount, double pack);

}  // namespace sheerlap

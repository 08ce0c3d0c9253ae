#include "joint/whole_packs.h"

#include <cassert>
#include <cmath>

namespace sheerlap {

std::size_t whole_packs(double amount, double pack) {
  assert(amount >= 0 && pack > 0);
  return static_cast<std::size_t>(std::ceil(amount / pack * (1 - 1e-9)));
}

}  // namespace sheerlap

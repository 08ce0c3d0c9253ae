#include "joint/whole_packs.h"

#include <cassert>
#include <cmath>

namespace sheerlap {

double rounded_up(double packs) { return std::ceil(packs * (1 - 1e-9)); }

Term rounded_up(const Term& packs) {
  return applied("ceil", rounded_up(packs.value()), packs, nullptr);
}

std::size_t whole_packs(double amount, double pack) {
  assert(amount >= 0 && pack > 0);
  return static_cast<std::size_t>(rounded_up(amount / pack));
}

}  // namespace sheerlap

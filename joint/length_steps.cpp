#include "joint/length_steps.h"

#include <algorithm>
#include <utility>

namespace sheerlap {

LengthSteps::LengthSteps(FastenerSpec spec) : spec_(std::move(spec)) {
  if (spec_.kind == FastenerKind::BlindRivet) return;
  constexpr double rounding_mm = 1e-9;
  const Length beyond = length_needed(spec_, Length());
  for (const Length length : spec_.lengths)
    greatest_mm_.push_back((length - beyond).in_mm() + rounding_mm);
}

std::size_t LengthSteps::serving(double stack_mm) const {
  if (spec_.kind == FastenerKind::BlindRivet) {
    const auto length = serving_length(spec_, Length::mm(stack_mm));
    if (!length) return spec_.lengths.size();
    const auto found = std::find(spec_.lengths.begin(), spec_.lengths.end(), *length);
    return static_cast<std::size_t>(found - spec_.lengths.begin());
  }
  std::size_t at = 0;
  while (at < greatest_mm_.size() && stack_mm > greatest_mm_[at]) ++at;
  return at;
}

}  // namespace sheerlap

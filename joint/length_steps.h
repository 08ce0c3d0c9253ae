#pragma once

#include <cstddef>
#include <vector>

#include "joint/fasteners.h"

namespace sheerlap {

/// Which length from stock serves a stack, as `serving_length` has it, found quickly.
class LengthSteps {
 public:
  explicit LengthSteps(FastenerSpec spec);

  const std::vector<Length>& lengths() const { return spec_.lengths; }
  /// The index of the length; `lengths().size()` if none serves.
  std::size_t serving(double stack_mm) const;

 private:
  FastenerSpec spec_;
  std::vector<double> greatest_mm_;  ///< stack that each length serves; not of rivets
};

}  // namespace sheerlap

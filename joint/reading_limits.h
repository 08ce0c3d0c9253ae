#pragma once

#include <optional>

#include "geometry/quantity.h"

namespace sheerlap {

/// What the gap readings of a boat are accepted by.
struct ReadingLimits {
  std::optional<Length> gap_min;  ///< the adhesive's, if not given
  std::optional<Length> gap_max;
  std::optional<Length> step;  ///< the most two neighbouring readings may differ by
};

}  // namespace sheerlap

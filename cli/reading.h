#pragma once

#include <limits>
#include <type_traits>
#include <vector>

#include "cli/source_map.h"
#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/length_text.h"

namespace sheerlap {

/// What reading a joint file gathers beside the values.
struct Reading {
  LengthUnit unit = LengthUnit::Millimetres;
  SourceMap sources;
  Errors errors;
  std::vector<DefaultUsed> defaults;
};

/// Why a default may stand that no text is known to state.
inline constexpr const char* common_practice = "common practice, no source";

/// The values a number may have; lengths in mm.
struct Bounds {
  double low = 0;
  double high = 0;
  bool above_low = false;  ///< `low` itself is out
  const char* words = "";  ///< what would be right
};

namespace bounds {
inline constexpr double unbounded = std::numeric_limits<double>::max();
inline constexpr Bounds any{-unbounded, unbounded, false, "a finite number"};
inline constexpr Bounds above_zero{0, unbounded, true, "more than 0"};
inline constexpr Bounds from_zero{0, unbounded, false, "0 or more"};
inline constexpr Bounds share{0, 1, false, "a share, from 0 to 1"};
}  // namespace bounds

/// A value that could not be read. NaN compares with nothing, so that no fault is found
/// in what was made of it; the error is already noted.
template <class T>
T unread() {
  if constexpr (std::is_same_v<T, Length>)
    return Length::mm(std::numeric_limits<double>::quiet_NaN());
  else if constexpr (std::is_same_v<T, double>)
    return std::numeric_limits<double>::quiet_NaN();
  else
    return T{};
}

}  // namespace sheerlap

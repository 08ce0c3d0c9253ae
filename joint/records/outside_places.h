#pragma once

#include <cstddef>
#include <vector>

#include "joint/records/record_charts.h"

namespace sheerlap {

/// A chart with gaps outside the gap window, of boats' latest states alone.
struct OutsidePlace {
  const PlaceChart* chart = nullptr;
  std::size_t outside = 0;  ///< so many of the boats
  std::size_t boats = 0;    ///< whose latest state it is
};

/// The charts with gaps outside the gap window; most boats outside first. What was
/// outside when dry and is inside once held does not count, as with one boat alone.
///
/// @param charts  outlive the result
std::vector<OutsidePlace> outside_places(const RecordCharts& charts);

}  // namespace sheerlap

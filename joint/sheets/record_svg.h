#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// A chart as a drawing of 210 mm by 148 mm: the gaps over their moving ranges, mean
/// and limits, the gap window, and what the chart says.
///
/// Values and ranges that a rule of a single point names are filled squares; the others
/// open circles where there is room for them.
std::string record_svg(const RecordCharts& charts,
                       const PlaceChart& chart,
                       const NumberStyle& style);

}  // namespace sheerlap

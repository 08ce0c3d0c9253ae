#pragma once

#include <string>

#include "joint/length_text.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// A row for each chart: limits, capability, drift, step.
std::string charts_csv(const RecordCharts& charts, LengthUnit unit);

/// A row for each gap: its hull, moving range and what the rules say of it.
std::string points_csv(const RecordCharts& charts, LengthUnit unit);

}  // namespace sheerlap

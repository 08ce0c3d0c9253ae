#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// The section of the page on the boats built: what the charts of the record say, a row
/// each, and the charts of those places at which the gap drifts or steps.
std::string boats_section(const RecordCharts& charts, const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// The charts of a record as a table with a line of blocks for each, what they say, and
/// how the limits came about.
std::string record_chart_text(const RecordCharts& charts, const NumberStyle& style);

/// What is to be known to read the charts, a paragraph each: the gap against the litres
/// used, how the limits came about, what the letters mean.
std::vector<std::string> chart_notes(const RecordCharts& charts);

/// The one line that says whether a drift or a step is found, and at which places gaps
/// are outside the gap window.
std::string change_line(const RecordCharts& charts, const NumberStyle& style);

}  // namespace sheerlap

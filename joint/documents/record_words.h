#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// How a chart names its place: "station 9", "mark S12", "girth 1235".
std::string place_name(const GapSeries& series, const NumberStyle& style);

/// "hull's top edge" or "lap's low edge".
std::string edge_words(bool low);

/// "top" or "low".
std::string edge_word(bool low);

/// What a rule found, in words: "beyond a limit", "9 or more in a row on one side".
std::string rule_words(ChartRule rule);

/// The letters of what a chart says: "!" a value beyond a limit, "m" a moving range
/// beyond its, "r" a run on one side, "t" a trend of six, "D" a drift, "S" a step.
std::string chart_letters(const PlaceChart& chart);

/// What a chart says, a sentence each; the drift or step first.
std::vector<std::string> chart_sentences(const PlaceChart& chart,
                                         const NumberStyle& style);

/// A chart's file name without its ending: "starboard-station-9-dry-top"; what a file
/// name should not have is replaced.
std::string chart_file_name(const GapSeries& series);

}  // namespace sheerlap

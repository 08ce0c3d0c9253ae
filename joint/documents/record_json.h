#pragma once

#include "joint/documents/json_parts.h"
#include "joint/documents/record_text.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// The answers of `record` as JSON: "format" and one part each; lengths in mm.
Json added_json(const AddedBoat& added);
Json boat_list_json(const BoatList& list);
Json boat_json(const BoatRecord& boat);
Json record_chart_json(const RecordCharts& charts);

/// A rule's key: "beyond_limit", "range_beyond_limit", "one_side", "rising", "falling".
const char* rule_key(ChartRule rule);

}  // namespace sheerlap

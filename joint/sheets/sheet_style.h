#pragma once

#include <string>

#include "joint/documents/report.h"
#include "joint/records/record_charts.h"

namespace sheerlap {

/// The paper of a shop: A4 with A3 for drawings (ISO 216), or Letter with ANSI B
/// (ASME Y14.1).
enum class Paper { A4, Letter };

/// How sheets are drawn and written, and what stands on them beside the job.
struct SheetStyle {
  ReportStyle report;  ///< unit and date
  Paper paper = Paper::A4;
  const RecordCharts* record = nullptr;  ///< of the boats built, if there is one
};

}  // namespace sheerlap

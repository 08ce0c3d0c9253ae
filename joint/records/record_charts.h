#pragma once

#include <optional>
#include <vector>

#include "joint/records/boat_record.h"
#include "joint/records/capability.h"
#include "joint/records/correlation.h"
#include "joint/records/individuals_chart.h"
#include "joint/records/series_change.h"

namespace sheerlap {

/// A series with what its chart says.
struct PlaceChart {
  GapSeries series;
  IndividualsChart chart;
  std::optional<Drift> drift;  ///< as the next two none below `boats_to_tell`
  std::optional<Step> step;
  std::optional<Capability> capability;
  bool drifts = false;      ///< the chance of the drift is below the record's level
  bool steps = false;       ///< likewise of the step
  bool more_step = false;   ///< a step leaves less scatter than a drift
  std::size_t outside = 0;  ///< gaps outside the window
};

/// The charts of a record.
struct RecordCharts {
  std::string title;
  Length gap_min, gap_max;
  std::vector<BoatFigures> boats;
  std::vector<PlaceChart> charts;
  std::size_t too_short = 0;  ///< series of one boat, of which there is no chart
  double level = 0;           ///< a drift or step is one if its chance is below this
  /// Mean gap (mm) against litres used.
  std::optional<Correlation> gap_and_litres;
};

/// The share of records without drift or step in which one is found all the same, at
/// most.
inline constexpr double false_alarms = 0.01;

/// With fewer boats at a place neither drift nor step nor capability is told.
/// @source  derived: of 8 the 95 % interval of Cp goes from 0.49 to 1.51 of it (chi-
///          squared, 7 degrees of freedom, 1.69 and 16.0); of fewer it is wider than Cp
inline constexpr std::size_t boats_to_tell = 8;

/// Gaps are read to 0.1 mm: the standard deviation that the rounding alone gives.
/// @source  derived: of a uniform error, its width over the root of 12
inline constexpr double rounding_scatter_mm = 0.1 / 3.4641016151377544;

/// Whether a chart has boats enough for drift, step and capability.
bool can_tell(const PlaceChart& chart);

/// The charts of a record; the level is `false_alarms` over twice the number of charts
/// that can tell.
RecordCharts record_charts(RecordSeries record);

/// Whether a drift or a step is found.
bool finds_change(const RecordCharts& charts);

}  // namespace sheerlap

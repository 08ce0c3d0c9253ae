#pragma once

#include <cstddef>
#include <vector>

namespace sheerlap {

/// Factors of charts of single values and moving ranges of two.
/// @source  ISO 7870-2 (Shewhart control charts), table of factors for n = 2, from
///          memory, confirm; derived: d2 = 2 / sqrt(pi), 2.66 = 3 / d2,
///          3.267 = 1 + 3 sqrt(2 - 4 / pi) / d2
namespace chart_factors {
inline constexpr double d2 = 1.128;    ///< mean range of two over sigma
inline constexpr double limit = 2.66;  ///< limits from the mean, over the mean range
inline constexpr double range_limit = 3.267;  ///< the range's limit over its mean
}  // namespace chart_factors

/// The first boats set the limits, or all where there are fewer.
/// @source  from memory, confirm: twenty or more values before limits are set
inline constexpr std::size_t boats_for_limits = 20;

/// What a chart can say.
/// @source  L. S. Nelson, "The Shewhart Control Chart - Tests for Special Causes",
///          Journal of Quality Technology 16 (1984) 237-239, tests 1, 2 and 3, from
///          memory, confirm
enum class ChartRule {
  BeyondLimit,       ///< one value beyond three sigma
  RangeBeyondLimit,  ///< one moving range beyond its limit
  OneSide,           ///< nine or more in a row on one side of the mean
  Rising,            ///< six or more in a row, each above the one before
  Falling,
};
inline constexpr std::size_t one_side_run = 9;
inline constexpr std::size_t trend_run = 6;

/// Where a rule is met: values `first` to `last`, counted from 0.
struct ChartSignal {
  ChartRule rule = ChartRule::BeyondLimit;
  std::size_t first = 0;
  std::size_t last = 0;
};

/// A chart of single values with one of their moving ranges.
struct IndividualsChart {
  std::size_t base = 0;  ///< so many of the first values set the limits
  double mean = 0;       ///< of these
  double sigma = 0;      ///< mean moving range over d2
  double low = 0;        ///< limits of the values
  double high = 0;
  double mean_range = 0;
  double range_high = 0;             ///< limit of the ranges
  std::vector<double> ranges;        ///< ranges[i] between values i and i + 1
  std::vector<ChartSignal> signals;  ///< by rule, then by place
};

/// The chart of a series.
///
/// @param values  at least two, in the order the boats were built
/// @source  limits: mean -+ 2.66 and 3.267 times the mean moving range, as above
IndividualsChart individuals_chart(const std::vector<double>& values);

}  // namespace sheerlap

#include "joint/records/individuals_chart.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

std::vector<ChartSignal> signals_of(const std::vector<double>& values, ChartRule rule) {
  std::vector<ChartSignal> found;
  for (const ChartSignal& signal : individuals_chart(values).signals)
    if (signal.rule == rule) found.push_back(signal);
  return found;
}

BOOST_AUTO_TEST_SUITE(individuals_chart_suite)

BOOST_AUTO_TEST_CASE(the_factors_are_those_of_a_range_of_two_normal_values) {
  // derived: the range of two normal values is |N(0, 2)|, with mean 2 / sqrt(pi) and
  // standard deviation sqrt(2 - 4 / pi); the table rounds to three decimals
  const double d2 = 2 / std::sqrt(std::numbers::pi);
  const double d3 = std::sqrt(2 - 4 / std::numbers::pi);
  BOOST_TEST(std::round(d2 * 1000) / 1000 == chart_factors::d2, tolerance(1e-12));
  BOOST_TEST(std::round(3 / d2 * 100) / 100 == chart_factors::limit, tolerance(1e-12));
  // published: 3.267 in ISO 7870-2's table for n = 2, from memory, confirm
  BOOST_TEST(1 + 3 * d3 / d2 == chart_factors::range_limit, tolerance(2e-4));
}

BOOST_AUTO_TEST_CASE(limits_are_those_of_a_worked_example) {
  // published: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rate of
  // ten batches: mean 50.81, mean moving range 1.8778, limits 45.8159 and 55.8041 with
  // 3 / 1.128 (from memory, confirm; derived again here: 508.1 / 10 and 16.9 / 9)
  const IndividualsChart chart =
      individuals_chart({49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1});
  BOOST_TEST(chart.base == 10U);
  BOOST_TEST(chart.mean == 50.81, tolerance(1e-12));
  BOOST_TEST(chart.mean_range == 16.9 / 9, tolerance(1e-12));
  // 2.66 is 3 / 1.128 rounded: 0.0004 of 1.8778 apart
  BOOST_TEST(std::abs(chart.low - 45.8159) < 0.001);
  BOOST_TEST(std::abs(chart.high - 55.8041) < 0.001);
  BOOST_TEST(chart.sigma == 16.9 / 9 / 1.128, tolerance(1e-12));
  BOOST_TEST(chart.range_high == 3.267 * 16.9 / 9, tolerance(1e-12));
  BOOST_TEST(chart.signals.empty());
}

BOOST_AUTO_TEST_CASE(the_first_twenty_boats_set_the_limits) {
  std::vector<double> values;
  for (int i = 0; i < 20; ++i) values.push_back(i % 2);
  const IndividualsChart twenty = individuals_chart(values);
  values.insert(values.end(), {9, 9, 9});
  const IndividualsChart more = individuals_chart(values);
  BOOST_TEST(more.base == 20U);
  BOOST_TEST(more.mean == twenty.mean);
  BOOST_TEST(more.mean_range == 1.0);  // derived: each of 19 ranges is 1
  BOOST_TEST(more.high == 0.5 + 2.66, tolerance(1e-12));
  BOOST_TEST(more.ranges.size() == 22U);
}

BOOST_AUTO_TEST_CASE(a_value_and_its_ranges_beyond_the_limits_are_named) {
  // derived: 20 values of 0 and 1 give limits 0.5 -+ 2.66 and a range limit of 3.267
  std::vector<double> values;
  for (int i = 0; i < 20; ++i) values.push_back(i % 2);
  values.insert(values.end(), {3.1, 4, 0.2, 0.7});
  const auto beyond = signals_of(values, ChartRule::BeyondLimit);
  BOOST_TEST_REQUIRE(beyond.size() == 1U);
  BOOST_TEST(beyond[0].first == 21U);
  const auto ranges = signals_of(values, ChartRule::RangeBeyondLimit);
  BOOST_TEST_REQUIRE(ranges.size() == 1U);
  BOOST_TEST(ranges[0].first == 21U);
  BOOST_TEST(ranges[0].last == 22U);
}

BOOST_AUTO_TEST_CASE(nine_on_one_side_are_a_run_and_eight_are_none) {
  // derived: the first twenty have mean 0, so those after them lie above it
  std::vector<double> values;
  for (int i = 0; i < 20; ++i) values.push_back(i % 2 == 0 ? 1 : -1);
  std::vector<double> eight = values;
  for (int i = 0; i < 8; ++i) eight.push_back(0.1 + 0.1 * (i % 2));
  BOOST_TEST(signals_of(eight, ChartRule::OneSide).empty());
  std::vector<double> nine = eight;
  nine.push_back(0.1);
  const auto runs = signals_of(nine, ChartRule::OneSide);
  BOOST_TEST_REQUIRE(runs.size() == 1U);
  BOOST_TEST(runs[0].first == 20U);
  BOOST_TEST(runs[0].last == 28U);
  nine[24] = 0;  // on the mean itself: on neither side
  BOOST_TEST(signals_of(nine, ChartRule::OneSide).empty());
}

BOOST_AUTO_TEST_CASE(six_rising_or_falling_are_a_trend_and_five_are_none) {
  const struct {
    std::vector<double> values;
    std::size_t rising, falling;
    const char* source;
  } rows[] = {
      {{0, 1, 2, 3, 4, 0}, 0, 0, "derived: five values rise"},
      {{0, 1, 2, 3, 4, 5, 0}, 1, 0, "derived: six values rise"},
      {{5, 4, 3, 2, 1, 0, 1}, 0, 1, "derived: six values fall"},
      {{0, 1, 2, 3, 3, 4, 5}, 0, 0, "derived: two alike end a rise"},
      {{0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0}, 1, 1, "derived: the top ends both"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      BOOST_TEST(signals_of(row.values, ChartRule::Rising).size() == row.rising);
      BOOST_TEST(signals_of(row.values, ChartRule::Falling).size() == row.falling);
    }
}

BOOST_AUTO_TEST_CASE(a_series_without_scatter_says_nothing) {
  BOOST_TEST(individuals_chart(std::vector<double>(30, 2.5)).signals.empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

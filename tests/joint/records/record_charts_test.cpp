#include "joint/records/record_charts.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/records/normal_values.h"

namespace sheerlap {
namespace {

GapSeries series_of(std::vector<double> gaps) {
  GapSeries series;
  series.name = "9";
  series.kind = PlaceKind::Station;
  for (std::size_t i = 0; i < gaps.size(); ++i)
    series.hulls.push_back(static_cast<std::int64_t>(i + 1));
  series.gaps_mm = std::move(gaps);
  return series;
}

RecordSeries record_of(std::vector<GapSeries> series) {
  RecordSeries record;
  record.gap_min = Length::mm(1);
  record.gap_max = Length::mm(8);
  record.series = std::move(series);
  return record;
}

std::vector<double> around(double mean, double drift, double step) {
  std::mt19937_64 source(2);
  auto values = normal_values(source, 30);
  for (std::size_t i = 0; i < values.size(); ++i)
    values[i] =
        mean + 0.1 * values[i] + drift * static_cast<double>(i) + (i >= 15 ? step : 0);
  return values;
}

BOOST_AUTO_TEST_SUITE(record_charts_suite)

BOOST_AUTO_TEST_CASE(a_drift_and_a_step_are_told_apart_and_from_a_steady_series) {
  const RecordCharts charts = record_charts(
      record_of({series_of(around(3, 0, 0)), series_of(around(3, 0.03, 0)),
                 series_of(around(3, 0, 0.6))}));
  BOOST_TEST_REQUIRE(charts.charts.size() == 3U);
  BOOST_TEST(!charts.charts[0].drifts);
  BOOST_TEST(!charts.charts[0].steps);
  BOOST_TEST(charts.charts[1].drifts);
  BOOST_TEST(!charts.charts[1].more_step);
  BOOST_TEST(charts.charts[2].steps);
  BOOST_TEST(charts.charts[2].more_step);
  BOOST_TEST(charts.charts[2].step->at == 15U);
  BOOST_TEST(finds_change(charts));
}

BOOST_AUTO_TEST_CASE(the_level_is_shared_by_all_the_tests_that_are_made) {
  // derived: two tests in each of the two charts of 8 boats, 0.01 / 4
  const std::vector<double> eight{1, 2, 1, 2, 1, 2, 1, 2};
  const RecordCharts charts = record_charts(record_of(
      {series_of(eight), series_of(eight), series_of({1, 2}), series_of({1})}));
  BOOST_TEST(charts.level == 0.0025, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(charts.too_short == 1U);
}

BOOST_AUTO_TEST_CASE(seven_boats_are_too_few_to_tell_and_eight_are_not) {
  std::vector<double> rising{2, 2.5, 3, 3.5, 4, 4.5, 5};
  const RecordCharts seven = record_charts(record_of({series_of(rising)}));
  BOOST_TEST(!finds_change(seven));
  BOOST_TEST(!seven.charts[0].drift.has_value());
  BOOST_TEST(!seven.charts[0].step.has_value());
  BOOST_TEST(!seven.charts[0].capability.has_value());
  BOOST_TEST(seven.level == 0.0);
  rising.push_back(5.5);
  const RecordCharts eight = record_charts(record_of({series_of(rising)}));
  BOOST_TEST(eight.charts[0].drifts);
  BOOST_TEST(eight.charts[0].capability.has_value());
}

BOOST_AUTO_TEST_CASE(steady_records_rounded_as_they_are_read_seldom_cry_wolf) {
  // property: of 1200 steady records of 3 to 12 boats, 12 places, read to 0.1 mm, at
  // most `false_alarms` are told to change; 3 standard errors of a share of 0.01 are
  // 0.0086. A scatter of 0.01 to 0.3 mm: below and above that of the rounding.
  std::mt19937_64 source(2026);
  int alarms = 0;
  int rising = 0;
  constexpr int rounds = 1200;
  for (int round = 0; round < rounds; ++round) {
    const std::size_t boats = 3 + static_cast<std::size_t>(round % 10);
    const double scatter = std::array{0.01, 0.03, 0.06, 0.15, 0.3}[round / 10 % 5];
    std::vector<GapSeries> steady;
    std::vector<GapSeries> moved;
    for (int place = 0; place < 12; ++place) {
      auto gaps = normal_values(source, boats);
      for (double& gap : gaps)
        gap = std::round(10 * (3 + 0.02 * place + scatter * gap)) / 10;
      steady.push_back(series_of(gaps));
      for (std::size_t i = 0; i < boats; ++i) gaps[i] += 0.5 * static_cast<double>(i);
      moved.push_back(series_of(gaps));
    }
    if (finds_change(record_charts(record_of(std::move(steady))))) ++alarms;
    if (finds_change(record_charts(record_of(std::move(moved))))) ++rising;
  }
  BOOST_TEST(alarms / double(rounds) <= false_alarms + 0.0086);
  // those of 8 boats or more, half of them, are found where they do move
  BOOST_TEST(rising == rounds / 2);
}

BOOST_AUTO_TEST_CASE(gaps_outside_the_window_are_counted) {
  const RecordCharts charts =
      record_charts(record_of({series_of({0.9, 1, 8, 8.1, 0.5})}));
  BOOST_TEST(charts.charts[0].outside == 3U);
}

BOOST_AUTO_TEST_CASE(mean_gap_and_litres_go_together_over_boats_that_have_both) {
  RecordSeries record = record_of({});
  for (int hull = 1; hull <= 6; ++hull)
    record.boats.push_back(
        {hull, Length::mm(hull), hull == 3 ? std::nullopt : std::optional(hull * 0.5)});
  const RecordCharts charts = record_charts(std::move(record));
  BOOST_TEST_REQUIRE(charts.gap_and_litres.has_value());
  BOOST_TEST(charts.gap_and_litres->count == 5U);
  BOOST_TEST(charts.gap_and_litres->slope == 0.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(!finds_change(charts));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

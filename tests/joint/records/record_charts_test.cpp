#include "joint/records/record_charts.h"

#include <boost/test/unit_test.hpp>

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
  // derived: two tests in each of two charts, 0.01 / 4
  const RecordCharts charts = record_charts(
      record_of({series_of({1, 2, 1}), series_of({1, 2, 1}), series_of({1})}));
  BOOST_TEST(charts.level == 0.0025, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(charts.too_short == 1U);
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

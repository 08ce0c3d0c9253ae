#include "joint/records/outside_places.h"

#include <boost/test/unit_test.hpp>
#include <utility>

namespace sheerlap {
namespace {

GapSeries series_of(const std::string& name,
                    ReadingState state,
                    std::vector<double> gaps) {
  GapSeries series;
  series.name = name;
  series.state = state;
  for (std::size_t i = 0; i < gaps.size(); ++i)
    series.hulls.push_back(static_cast<std::int64_t>(i + 1));
  series.gaps_mm = std::move(gaps);
  return series;
}

RecordCharts charts_of(std::vector<GapSeries> series) {
  RecordSeries record;
  record.gap_min = Length::mm(1);
  record.gap_max = Length::mm(8);
  record.series = std::move(series);
  return record_charts(std::move(record));
}

BOOST_AUTO_TEST_SUITE(outside_places_suite)

BOOST_AUTO_TEST_CASE(the_place_with_most_boats_outside_comes_first) {
  const RecordCharts charts =
      charts_of({series_of("4", ReadingState::Dry, {9, 3, 3}),
                 series_of("6", ReadingState::Dry, {3, 3, 3}),
                 series_of("9", ReadingState::Dry, {0.5, 0.9, 8.1})});
  const auto places = outside_places(charts);
  BOOST_TEST_REQUIRE(places.size() == 2U);
  BOOST_TEST(places[0].chart->series.name == "9");
  BOOST_TEST(places[0].outside == 3U);
  BOOST_TEST(places[1].outside == 1U);
  BOOST_TEST(places[1].boats == 3U);
}

BOOST_AUTO_TEST_CASE(what_is_inside_once_held_does_not_count_as_outside) {
  // hull 3 was not read again, and stays as it was when dry
  const RecordCharts charts = charts_of({series_of("4", ReadingState::Dry, {9, 9, 9}),
                                         series_of("4", ReadingState::Held, {7, 7})});
  const auto places = outside_places(charts);
  BOOST_TEST_REQUIRE(places.size() == 1U);
  BOOST_TEST(places[0].outside == 1U);
  BOOST_TEST(places[0].boats == 1U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

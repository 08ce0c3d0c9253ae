#include "joint/sheets/joint_page_boats.h"

#include <boost/test/unit_test.hpp>
#include <string>
#include <utility>

namespace sheerlap {
namespace {

const NumberStyle style(LengthUnit::Millimetres, Length::mm(1));

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos;
       at = text.find(part, at + part.size()))
    ++count;
  return count;
}

GapSeries series_of(const std::string& name, std::vector<double> gaps) {
  GapSeries series;
  series.kind = PlaceKind::Station;
  series.name = name;
  for (std::size_t i = 0; i < gaps.size(); ++i)
    series.hulls.push_back(static_cast<std::int64_t>(i + 1));
  series.gaps_mm = std::move(gaps);
  return series;
}

/// A record of 24 boats with a steady place and one whose gap grows by 0.1 a boat.
RecordCharts charts_of(const std::string& title) {
  std::vector<double> steady, growing;
  for (int i = 0; i < 24; ++i) {
    const double rattle = i % 3 * 0.05;
    steady.push_back(3 + rattle);
    growing.push_back(3 + rattle + 0.1 * i);
  }
  RecordSeries record;
  record.title = title;
  record.gap_min = Length::mm(1);
  record.gap_max = Length::mm(8);
  for (std::int64_t hull = 1; hull <= 24; ++hull)
    record.boats.push_back({hull, std::nullopt, std::nullopt});
  record.series = {series_of("8", steady), series_of("9", growing)};
  return record_charts(std::move(record));
}

BOOST_AUTO_TEST_SUITE(joint_page_boats)

BOOST_AUTO_TEST_CASE(every_chart_has_a_row_and_those_that_change_their_drawing) {
  const std::string html = boats_section(charts_of("Demo"), style);
  BOOST_TEST(times(html, "<th scope=\"row\">") == 2U);
  BOOST_TEST(times(html, "<img ") == 1U);
  BOOST_TEST(html.find("Starboard, station 9") != std::string::npos);
  BOOST_TEST(html.find("LOOK: the gap drifts or steps in 1 of 2 charts.") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_drawing_stands_in_the_page_and_keeps_its_styles_to_itself) {
  const std::string html = boats_section(charts_of("Demo"), style);
  BOOST_TEST(times(html, "src=\"data:image/svg+xml") == 1U);
  BOOST_TEST(times(html, "<svg") == 0U);
  BOOST_TEST(times(html, "<style") == 0U);
}

BOOST_AUTO_TEST_CASE(a_title_is_text_wherever_it_stands) {
  const std::string html = boats_section(charts_of("<b>&\"'"), style);
  BOOST_TEST(times(html, "<b>&") == 0U);
  BOOST_TEST(times(html, "&lt;b&gt;") >= 1U);
}

BOOST_AUTO_TEST_CASE(an_empty_record_says_so) {
  BOOST_TEST(times(boats_section(record_charts({}), style), "no boat yet") == 1U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

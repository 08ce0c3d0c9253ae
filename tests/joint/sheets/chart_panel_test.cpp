#include "joint/sheets/chart_panel.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

std::size_t count_of(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos;
       at = text.find(part, at + 1))
    ++count;
  return count;
}

BOOST_AUTO_TEST_SUITE(chart_panel)

BOOST_AUTO_TEST_CASE(ticks_are_round_and_about_five) {
  const struct {
    double span, step;
  } rows[] = {{5, 1}, {5.1, 2}, {10, 2}, {11, 5}, {26, 10}, {0.9, 0.2}, {0.03, 0.01}};
  for (const auto& row : rows)
    BOOST_TEST(tick_step(row.span) == row.step, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(boats_run_from_edge_to_edge_and_values_upward) {
  const ChartPanel panel(24, 76, {1, 3}, 11);
  BOOST_TEST(panel.x(0) == ChartPanel::left + 2);
  BOOST_TEST(panel.x(10) == ChartPanel::right - 2);
  BOOST_TEST(panel.y(2) == 50.0, tolerance(1e-12));
  BOOST_TEST(panel.y(3) > 24);
  BOOST_TEST(panel.y(3) < panel.y(1));
}

BOOST_AUTO_TEST_CASE(
    marked_values_are_squares_and_the_rest_circles_where_there_is_room) {
  const ChartPanel panel(24, 76, {1, 3}, 4);
  const std::string text = panel.series({1, 2, 3, 2}, 0, {2});
  BOOST_TEST(count_of(text, "<rect") == 1U);
  BOOST_TEST(count_of(text, "<circle") == 3U);
  const ChartPanel many(24, 76, {1, 3}, 4000);
  BOOST_TEST(count_of(many.series(std::vector<double>(4000, 2), 0, {}), "<circle") ==
             0U);
}

BOOST_AUTO_TEST_CASE(a_range_of_nothing_but_rounding_has_ticks_that_can_be_counted) {
  for (const double high : {2.5, 2.5 + 1e-15}) {
    const ChartPanel panel(24, 76, {2.5, high}, 4);
    BOOST_TEST(count_of(panel.frame("gap"), "<path") >= 3U);
    BOOST_TEST(count_of(panel.frame("gap"), "<path") < 12U);
  }
}

BOOST_AUTO_TEST_CASE(a_level_beyond_the_range_is_not_drawn) {
  const ChartPanel panel(24, 76, {1, 3}, 4);
  BOOST_TEST(panel.level(8, "window", "window 8").empty());
  BOOST_TEST(count_of(panel.level(2, "mean", "mean 2"), "class=\"mean\"") == 1U);
}

BOOST_AUTO_TEST_CASE(users_text_stands_for_itself) {
  BOOST_TEST(count_of(svg_text(0, 0, "<b>&\x01", ""), "&lt;b&gt;&amp; ") == 1U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

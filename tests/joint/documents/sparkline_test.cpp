#include "joint/documents/sparkline.h"

#include <boost/test/unit_test.hpp>

#include "joint/documents/text_table.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(sparkline_suite)

BOOST_AUTO_TEST_CASE(each_eighth_of_the_range_has_its_height) {
  BOOST_TEST(sparkline({0, 1, 2, 3, 4, 5, 6, 7.9, 8}, 0, 8, 20) == "▁▂▃▄▅▆▇██");
}

BOOST_AUTO_TEST_CASE(values_beyond_the_range_have_the_least_or_greatest_height) {
  BOOST_TEST(sparkline({-5, 20}, 0, 8, 20) == "▁█");
}

BOOST_AUTO_TEST_CASE(more_values_than_there_is_room_for_are_put_together) {
  // derived: means of 0 and 4, and of 8 and 8
  BOOST_TEST(sparkline({0, 4, 8, 8}, 0, 8, 2) == "▃█");
  BOOST_TEST(width_of(sparkline(std::vector<double>(31, 1), 0, 8, 24)) == 24U);
}

BOOST_AUTO_TEST_CASE(a_range_without_height_is_drawn_half_way_up) {
  BOOST_TEST(sparkline({3, 3}, 3, 3, 5) == "▅▅");
  BOOST_TEST(sparkline({}, 0, 1, 5) == "");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

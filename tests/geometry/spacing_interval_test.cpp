#include "geometry/spacing_interval.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

void check_same(const std::vector<SpacingInterval>& intervals,
                const std::vector<SpacingInterval>& expected) {
  BOOST_TEST_REQUIRE(intervals.size() == expected.size());
  for (std::size_t index = 0; index < expected.size(); ++index) {
    BOOST_TEST(intervals[index].from_mm == expected[index].from_mm);
    BOOST_TEST(intervals[index].to_mm == expected[index].to_mm);
  }
}

BOOST_AUTO_TEST_SUITE(spacing_interval)

BOOST_AUTO_TEST_CASE(intervals_that_touch_are_joined) {
  std::vector<SpacingInterval> intervals{{5, 6}, {2, 3}, {0, 2}, {2.5, 2.5}, {7, 7}};
  join(intervals);
  check_same(intervals, {{0, 3}, {5, 6}, {7, 7}});  // derived: by hand
  append(intervals, {7, 9});
  append(intervals, {8, 8});
  append(intervals, {10, 11});
  check_same(intervals, {{0, 3}, {5, 6}, {7, 9}, {10, 11}});  // derived: by hand
}

BOOST_AUTO_TEST_CASE(no_intervals_join_to_none) {
  std::vector<SpacingInterval> intervals;
  join(intervals);
  BOOST_TEST(intervals.empty());  // derived: by hand
}

BOOST_AUTO_TEST_CASE(the_rest_of_an_interval_keeps_its_length) {
  // derived: by hand
  check_same(rest_of({0, 10}, {}), {{0, 10}});
  check_same(rest_of({0, 10}, {{2, 3}, {5, 5}, {9, 12}}), {{0, 2}, {3, 5}, {5, 9}});
  check_same(rest_of({0, 10}, {{-5, -1}, {-1, 0}, {10, 11}}), {{0, 10}});
  check_same(rest_of({0, 10}, {{-1, 11}}), {});
}

BOOST_AUTO_TEST_CASE(a_single_place_is_left_or_not) {
  // derived: by hand
  check_same(rest_of({4, 4}, {{0, 3}, {5, 6}}), {{4, 4}});
  check_same(rest_of({4, 4}, {{0, 4}}), {});
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

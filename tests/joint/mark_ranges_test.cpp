#include "joint/mark_ranges.h"

#include <boost/test/unit_test.hpp>
#include <set>

namespace sheerlap {
namespace {

std::string ranges_of(const std::set<std::string>& listed) {
  std::vector<DrillStation> stations;
  for (const char* mark : {"S01", "S02", "S03", "S04", "S05", "S06", "P01", "P02"}) {
    DrillStation station;
    station.mark = mark;
    station.side = mark[0] == 'S' ? SideName::Starboard : SideName::Port;
    stations.push_back(station);
  }
  return mark_ranges(stations, [&](const DrillStation& station) {
    return listed.contains(station.mark);
  });
}

BOOST_AUTO_TEST_SUITE(mark_ranges_suite)

BOOST_AUTO_TEST_CASE(three_neighbours_are_a_range_and_two_are_not) {
  // derived: by hand
  BOOST_TEST(ranges_of({"S01", "S02", "S03", "S05"}) == "S01-S03, S05");
  BOOST_TEST(ranges_of({"S02", "S03"}) == "S02, S03");
  BOOST_TEST(ranges_of({}).empty());
}

BOOST_AUTO_TEST_CASE(a_range_does_not_run_from_one_side_to_the_next) {
  BOOST_TEST(ranges_of({"S04", "S05", "S06", "P01", "P02"}) == "S04-S06, P01, P02");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

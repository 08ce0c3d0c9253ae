#include "joint/leak_marks.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A round boat with marks every 500 mm on starboard, and beads on its first metre.
struct MarkedBoat {
  MarkedBoat() : perimeter(perimeter_of(circle_joint(2000, 48, {}))) {
    for (int i = 1; i <= 4; ++i) {
      DrillStation station;
      station.mark = "S0" + std::to_string(i);
      station.girth = Length::mm(500 * i);
      station.pitch = Length::mm(500);
      stations.push_back(station);
    }
    beads = {{SideName::Port, Length(), Length::mm(5000), Length::mm(20), 2},
             {SideName::Starboard, Length(), Length::mm(1100), Length::mm(16), 1}};
  }
  std::vector<LeakMark> marks(double girth, SideName side = SideName::Starboard) const {
    const ReadingsGap gap(perimeter, readings, ReadingState::Dry);
    return leak_marks({perimeter, stations, beads, gap, Length::mm(25)}, side,
                      Length::mm(girth));
  }
  Perimeter perimeter;
  std::vector<DrillStation> stations;
  std::vector<BeadRun> beads;
  std::vector<GapReading> readings;
};

BOOST_FIXTURE_TEST_SUITE(leak_marks_suite, MarkedBoat)

BOOST_AUTO_TEST_CASE(a_leak_has_the_marks_on_both_sides_of_it) {
  const auto found = marks(1200);
  BOOST_TEST_REQUIRE(found.size() == 2U);
  BOOST_TEST(found[0].mark == "S02");
  BOOST_TEST(found[1].mark == "S03");
  BOOST_TEST(found[0].pitch.in_mm() == 500.0);
  BOOST_TEST(marks(1500)[0].mark == "S03");  // on a mark: that one and the next
}

BOOST_AUTO_TEST_CASE(at_the_ends_of_a_side_there_is_one_mark_and_elsewhere_none) {
  BOOST_TEST_REQUIRE(marks(100).size() == 1U);
  BOOST_TEST(marks(100)[0].mark == "S01");
  BOOST_TEST_REQUIRE(marks(2500).size() == 1U);
  BOOST_TEST(marks(2500)[0].mark == "S04");
  BOOST_TEST(marks(100, SideName::Port).empty());
}

BOOST_AUTO_TEST_CASE(a_mark_has_the_bead_that_runs_by_it) {
  const auto found = marks(1200);
  BOOST_TEST_REQUIRE(found[0].bead.has_value());
  BOOST_TEST(found[0].bead->in_mm() == 16.0);
  BOOST_TEST(found[0].beads == 1U);
  BOOST_TEST(!found[1].bead.has_value());
}

BOOST_AUTO_TEST_CASE(a_mark_has_the_gap_of_the_boat_at_the_drill_line) {
  GapReading reading;
  reading.girth = Length::mm(1000);
  reading.top = Length::mm(4);
  reading.low = Length::mm(6);
  readings = {reading};
  // derived: the drill line is half way down the lap
  BOOST_TEST(marks(1200)[0].gap.in_mm() == 5.0, tolerance(1e-9));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

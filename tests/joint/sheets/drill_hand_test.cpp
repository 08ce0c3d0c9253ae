#include "joint/sheets/drill_hand.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

DrillStation hole(const std::string& mark, SideName side, double girth_mm) {
  DrillStation station;
  station.mark = mark;
  station.side = side;
  station.girth = Length::mm(girth_mm);
  station.because = "fixed: a given place";
  return station;
}

Schedule mirrored() {
  Schedule schedule;
  schedule.stations = {
      hole("S01", SideName::Starboard, 100), hole("S02", SideName::Starboard, 200),
      hole("P01", SideName::Port, 100.005), hole("P02", SideName::Port, 200)};
  return schedule;
}

bool says(const std::string& words, const std::string& what) {
  return words.find(what) != std::string::npos;
}

BOOST_AUTO_TEST_SUITE(drill_hand)

BOOST_AUTO_TEST_CASE(ports_sheet_says_where_its_girths_are_starboards) {
  const std::string words = hand_words(mirrored(), SideName::Port);
  BOOST_TEST(says(words, "its girths are the same as starboard's"));
  BOOST_TEST(says(words, "for port only"));
  BOOST_TEST(!says(words, "mirror image"));
}

BOOST_AUTO_TEST_CASE(ports_sheet_names_the_holes_that_differ_on_either_hand) {
  Schedule schedule = mirrored();
  schedule.stations[3].girth = Length::mm(200.02);
  const std::string words = hand_words(schedule, SideName::Port);
  BOOST_TEST(says(words, "it is no mirror image of starboard"));
  BOOST_TEST(says(words, "Port's own holes or reasons: P02."));
  BOOST_TEST(says(words, "Starboard's, not on port: S02."));
}

BOOST_AUTO_TEST_CASE(another_reason_makes_a_hole_another_one) {
  Schedule schedule = mirrored();
  schedule.stations[2].because = "at the edge of the fuel fill";
  BOOST_TEST(says(hand_words(schedule, SideName::Port), "reasons: P01."));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

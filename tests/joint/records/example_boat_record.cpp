#include "tests/joint/records/example_boat_record.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {

BoatRecord example_boat_record(std::int64_t hull) {
  BoatRecord boat;
  boat.hull = hull;
  boat.title = "Example";
  boat.gap_min = Length::mm(1);
  boat.gap_max = Length::mm(8);
  boat.mean_gap = Length::mm(3.125);
  boat.litres = 2.15;
  boat.readings = {
      {SideName::Starboard, PlaceKind::Station, "9", Length::mm(2900), Length::mm(2.5),
       Length::mm(4.1), ReadingState::Dry, "feeler gauge"},
      {SideName::Starboard, PlaceKind::Station, "9", Length::mm(2900), Length::mm(2.4),
       std::nullopt, ReadingState::After, ""},
      {SideName::Port, PlaceKind::Girth, "1200", Length::mm(1200), std::nullopt,
       Length::mm(0.5), ReadingState::Dry, ""}};
  boat.leaks = {
      {SideName::Port,
       Length::mm(1250),
       {{"P08", Length::mm(1195.5), Length::mm(3), Length::mm(16), 1, Length::mm(143)},
        {"P09", Length::mm(1338.5), Length::mm(3.1), std::nullopt, 0,
         Length::mm(143)}}}};
  return boat;
}

void check_alike(const BoatRecord& found, const BoatRecord& expected) {
  BOOST_TEST(found.hull == expected.hull);
  BOOST_TEST(found.title == expected.title);
  BOOST_TEST((found.gap_min == expected.gap_min && found.gap_max == expected.gap_max));
  BOOST_TEST((found.mean_gap == expected.mean_gap));
  BOOST_TEST((found.litres == expected.litres && found.holes == expected.holes));
  BOOST_TEST_REQUIRE(found.readings.size() == expected.readings.size());
  for (std::size_t i = 0; i < found.readings.size(); ++i) {
    const GapReading& a = found.readings[i];
    const GapReading& b = expected.readings[i];
    BOOST_TEST((a.side == b.side && a.kind == b.kind && a.name == b.name &&
                a.girth == b.girth && a.top == b.top && a.low == b.low &&
                a.state == b.state && a.note == b.note));
  }
  BOOST_TEST_REQUIRE(found.leaks.size() == expected.leaks.size());
  for (std::size_t i = 0; i < found.leaks.size(); ++i) {
    const Leak& a = found.leaks[i];
    const Leak& b = expected.leaks[i];
    BOOST_TEST((a.side == b.side && a.girth == b.girth));
    BOOST_TEST_REQUIRE(a.marks.size() == b.marks.size());
    for (std::size_t j = 0; j < a.marks.size(); ++j)
      BOOST_TEST(
          (a.marks[j].mark == b.marks[j].mark && a.marks[j].girth == b.marks[j].girth &&
           a.marks[j].gap == b.marks[j].gap && a.marks[j].bead == b.marks[j].bead &&
           a.marks[j].beads == b.marks[j].beads &&
           a.marks[j].pitch == b.marks[j].pitch));
  }
}

}  // namespace sheerlap

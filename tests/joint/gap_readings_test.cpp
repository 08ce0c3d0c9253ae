#include "joint/gap_readings.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box of 2 m by 1 m with labels, an opening in its transom and two marks a side.
struct LabelledBox {
  LabelledBox() {
    joint = box_joint(2000, 1000, {});
    const char* const labels[] = {"bow", "shoulder", "corner", "aft"};
    BOOST_TEST_REQUIRE(joint.sheer.rows.size() == 4U);
    for (std::size_t i = 0; i < 4; ++i) joint.sheer.rows[i].station = labels[i];
    joint.openings = {
        {{SideChoice::Transom, Length::mm(400), Length::mm(600)}, "well"}};
    perimeter = perimeter_of(joint);
    for (const SideName side : {SideName::Starboard, SideName::Port}) {
      const std::string letter = side == SideName::Port ? "P" : "S";
      for (const int i : {1, 2}) {
        DrillStation station;
        station.mark = letter + "0" + std::to_string(i);
        station.side = side;
        station.girth = Length::mm(600 + 100 * i);
        stations.push_back(station);
      }
    }
  }

  static GivenReading reading(SideName side, PlaceKind kind, const std::string& name) {
    GivenReading given;
    given.side = side;
    given.kind = kind;
    if (kind == PlaceKind::Girth)
      given.girth = Length::mm(std::stod(name));
    else
      given.name = name;
    given.top = Length::mm(3);
    return given;
  }

  std::string refusal(const GivenReading& given) const {
    const auto placed = placed_readings(joint, perimeter, stations, {given});
    return placed ? "" : placed.error().front().message;
  }

  Joint joint;
  Perimeter perimeter;
  std::vector<DrillStation> stations;
};

BOOST_FIXTURE_TEST_SUITE(gap_readings, LabelledBox)

BOOST_AUTO_TEST_CASE(places_are_found_by_girth_mark_and_station) {
  const auto placed =
      placed_readings(joint, perimeter, stations,
                      {reading(SideName::Port, PlaceKind::Girth, "1234.5"),
                       reading(SideName::Port, PlaceKind::Mark, "P02"),
                       reading(SideName::Starboard, PlaceKind::Station, "shoulder")});
  BOOST_TEST_REQUIRE(placed.has_value());
  BOOST_TEST((*placed)[0].girth.in_mm() == 1234.5);
  BOOST_TEST((*placed)[0].name == "1234.5");
  BOOST_TEST((*placed)[1].girth.in_mm() == 800.0);
  // derived: gap 3 and lip 5 outside half the beam, 500: the drill line runs 508 to the
  // shoulder
  BOOST_TEST((*placed)[2].girth.in_mm() == 508.0, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_place_that_the_joint_does_not_have_is_refused_in_words) {
  const struct {
    SideName side;
    PlaceKind kind;
    const char* name;
    const char* message;
  } rows[] = {
      {SideName::Port, PlaceKind::Mark, "P03",
       "the schedule has no mark \"P03\" on port: did you mean P01?"},
      {SideName::Port, PlaceKind::Mark, "S01",
       "the schedule has no mark \"S01\" on port: did you mean P01?"},
      {SideName::Transom, PlaceKind::Mark, "T01",
       "the schedule has no mark on transom: give the girth, or a station of the sheer "
       "table"},
      {SideName::Port, PlaceKind::Station, "12",
       "no row of the sheer table on port has the station \"12\": give the girth, or a "
       "label that is there"},
      {SideName::Transom, PlaceKind::Station, "corner",
       "the station \"corner\" stands 2 times on transom: give the girth"},
      {SideName::Transom, PlaceKind::Girth, "500",
       "girth 500 mm on transom is in the opening well: there is no joint from 400 mm "
       "to 600 mm"},
      {SideName::Transom, PlaceKind::Girth, "1100",
       "girth 1100 mm is not on transom: its drill line runs from 0 to 1016 mm"},
  };
  for (const auto& row : rows)
    BOOST_TEST(refusal(reading(row.side, row.kind, row.name)) == row.message);
}

BOOST_AUTO_TEST_CASE(a_place_is_read_once_in_each_state) {
  GivenReading dry = reading(SideName::Port, PlaceKind::Girth, "700");
  GivenReading after = dry;
  after.state = ReadingState::After;
  BOOST_TEST(placed_readings(joint, perimeter, stations, {dry, after}).has_value());
  const auto twice = placed_readings(joint, perimeter, stations, {dry, after, dry});
  BOOST_TEST_REQUIRE(!twice.has_value());
  BOOST_TEST(twice.error().front().where == "reading[2]");
  BOOST_TEST(twice.error().front().message ==
             "girth 700 mm on port is read twice dry: leave one out");
}

BOOST_AUTO_TEST_CASE(a_side_that_the_joint_does_not_have_is_refused) {
  const Perimeter round = perimeter_of(circle_joint(2000, 24, {}));
  const auto placed =
      placed_readings(circle_joint(2000, 24, {}), round, {},
                      {reading(SideName::Transom, PlaceKind::Girth, "5")});
  BOOST_TEST_REQUIRE(!placed.has_value());
  BOOST_TEST(placed.error().front().message ==
             "this joint has no transom side: name one that it has");
}

BOOST_AUTO_TEST_CASE(the_latest_state_is_after_then_held_then_dry) {
  std::vector<GapReading> readings(3);
  BOOST_TEST((latest_state(readings) == ReadingState::Dry));
  readings[1].state = ReadingState::Held;
  BOOST_TEST((latest_state(readings) == ReadingState::Held));
  readings[0].state = ReadingState::After;
  BOOST_TEST((latest_state(readings) == ReadingState::After));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/records/boat_merge.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/records/example_boat_record.h"

namespace sheerlap {
namespace {

/// More about the example's boat that is not in it yet.
BoatRecord example_more() {
  BoatRecord more = example_boat_record(12);
  more.litres.reset();
  more.readings.resize(1);
  more.readings[0].state = ReadingState::Held;
  more.leaks[0].girth = Length::mm(2000);
  more.holes = 109;
  return more;
}

std::vector<std::string> refusals(const BoatRecord& more) {
  const auto merged = with_more(example_boat_record(12), more);
  std::vector<std::string> messages;
  if (!merged)
    for (const Error& error : merged.error())
      messages.push_back(error.where + ": " + error.message);
  return messages;
}

BOOST_AUTO_TEST_SUITE(boat_merge)

BOOST_AUTO_TEST_CASE(a_new_boat_is_what_is_told_of_it) {
  check_alike(*with_more(std::nullopt, example_more()), example_more());
}

BOOST_AUTO_TEST_CASE(a_boat_gains_what_it_did_not_have) {
  const auto boat = with_more(example_boat_record(12), example_more());
  BOOST_TEST_REQUIRE(boat.has_value());
  BOOST_TEST(boat->readings.size() == 4U);
  BOOST_TEST(boat->leaks.size() == 2U);
  BOOST_TEST(boat->litres.value() == 2.15);
  BOOST_TEST(boat->holes.value() == 109);
}

BOOST_AUTO_TEST_CASE(nothing_that_is_kept_is_written_over) {
  const auto messages = refusals(example_boat_record(12));
  const std::vector<std::string> expected{
      "litres: hull 12 has 2.15 litres already: leave --litres out",
      "reading[0]: hull 12 has station 9 on starboard dry already: leave the row out",
      "reading[1]: hull 12 has station 9 on starboard after already: leave the row out",
      "reading[2]: hull 12 has girth 1200 mm on port dry already: leave the row out",
      "leak[0]: hull 12 has this leak already: leave it out"};
  BOOST_TEST(messages == expected, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(gaps_of_the_latest_state_are_held_against_the_window) {
  // derived: of the example only 2.4 was read after the adhesive, inside 1 to 8; dry
  // alone, 0.5 is outside
  BoatRecord boat = example_boat_record(12);
  BOOST_TEST(gaps_outside(boat) == 0U);
  boat.readings.erase(boat.readings.begin() + 1);
  BOOST_TEST(gaps_outside(boat) == 1U);
  BOOST_TEST(window_word(boat, Length::mm(0.5)) == "tight");
  BOOST_TEST(window_word(boat, Length::mm(1)) == "");
  BOOST_TEST(window_word(boat, Length::mm(8.01)) == "wide");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "cli/reading_table.h"

#include <boost/test/unit_test.hpp>

#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

const auto rounding = boost::test_tools::tolerance(1e-14);

std::vector<std::string> refusal_of_readings(const std::string& text) {
  const ReadingTable table = read_reading_table(text, LengthUnit::Millimetres);
  std::vector<std::string> messages;
  for (const Error& error : located(table.errors, "r.csv", table))
    messages.push_back(error.message);
  return messages;
}

BOOST_AUTO_TEST_SUITE(reading_table)

BOOST_AUTO_TEST_CASE(rows_say_side_place_gaps_state_and_note) {
  const ReadingTable table = read_reading_table(
      "\xEF\xBB\xBFstate,side,girth,mark,station,gap_top,gap_low,note\r\n"
      "dry,port,1200,,,2.5,,\r\n\r\n"
      "held,starboard,,S09,,,\"3/16 in\",by shim\n"
      "after,transom,,,\"a, b\",1,2.25,\n",
      LengthUnit::Millimetres);
  BOOST_TEST(table.errors.empty());
  BOOST_TEST_REQUIRE(table.readings.size() == 3U);
  const GivenReading& first = table.readings[0];
  BOOST_TEST((first.side == SideName::Port && first.kind == PlaceKind::Girth &&
              first.state == ReadingState::Dry));
  BOOST_TEST(first.girth.in_mm() == 1200.0);
  BOOST_TEST(first.top->in_mm() == 2.5);
  BOOST_TEST(!first.low.has_value());
  const GivenReading& second = table.readings[1];
  BOOST_TEST((second.kind == PlaceKind::Mark && second.state == ReadingState::Held));
  BOOST_TEST(second.name == "S09");
  BOOST_TEST(second.low->in_mm() == 4.7625, rounding);  // derived: 3 / 16 of 25.4
  BOOST_TEST(second.note == "by shim");
  BOOST_TEST(table.readings[2].name == "a, b");
  BOOST_TEST((table.lines == std::vector<std::size_t>{2, 4, 5}));
}

BOOST_AUTO_TEST_CASE(bare_numbers_are_in_the_joint_files_units) {
  const ReadingTable table = read_reading_table(
      "side,girth,gap_top,state\nport,48,0.125,dry\n", LengthUnit::Inches);
  BOOST_TEST_REQUIRE(table.readings.size() == 1U);
  BOOST_TEST(table.readings[0].girth.in_inches() == 48.0, rounding);
  BOOST_TEST(table.readings[0].top->in_inches() == 0.125, rounding);
}

BOOST_AUTO_TEST_CASE(wrong_headers_are_told_what_would_be_right) {
  const struct {
    const char* text;
    std::vector<std::string> messages;
  } rows[] = {
      {"",
       {"r.csv:1: there is no reading in it: a header line such as "
        "side,girth,gap_top,gap_low,state and a line for each reading"}},
      {"side,girth,gap_top,state\n",
       {"r.csv:1: there is no reading in it: a header line such as "
        "side,girth,gap_top,gap_low,state and a line for each reading"}},
      {"\n\nsides,girth,gap_top,state,state\n",
       {"r.csv:3: unknown column \"sides\": did you mean side?",
        "r.csv:3: the column state stands twice: leave one out",
        "r.csv:3: there is no column side: starboard, port or transom in each row"}},
      {"side\n",
       {"r.csv:1: there is no column state: dry, held or after in each row",
        "r.csv:1: there is no column for the place: girth, mark or station",
        "r.csv:1: there is no column for the gap: gap_top, gap_low or both"}},
  };
  for (const auto& row : rows)
    check_messages(refusal_of_readings(row.text), row.messages);
}

BOOST_AUTO_TEST_CASE(wrong_rows_are_told_what_would_be_right_all_at_once) {
  check_messages(
      refusal_of_readings("side,girth,mark,gap_top,gap_low,state\n"
                          "left,,,,,wet\n"
                          "port,100,P01,2,,dry\n"
                          "port,100,,-1,1 furlong,dry\n"
                          "port,100,,2,dry\n"
                          "port,100,,\"2,3,dry\n"),
      {"r.csv:2: side is \"left\": starboard, port or transom",
       "r.csv:2: no place is given: a girth on the drill line, a mark or a station",
       "r.csv:2: no gap is given: gap_top, gap_low or both",
       "r.csv:2: state is \"wet\": dry, held or after",
       "r.csv:3: more than one place is given: a girth, a mark or a station",
       "r.csv:4: gap_top is -1 mm: 0 or more; a gauge reads no interference",
       "r.csv:4: gap_low \"1 furlong\" has the unit \"furlong\": mm, cm, m, in or ft",
       "r.csv:5: the row has 5 cells and the header 6 columns: one cell for each "
       "column",
       "r.csv:6: a quoted cell is not closed on its line: close it, or leave the "
       "quotes "
       "out"});
}

BOOST_AUTO_TEST_CASE(a_file_full_of_faults_is_told_a_hundred_and_how_many_more) {
  std::string text = "side,girth,gap_top,state\n";
  for (int i = 0; i < 103; ++i) text += "left,1,1,dry\n";
  const auto messages = refusal_of_readings(text);
  BOOST_TEST_REQUIRE(messages.size() == 101U);
  BOOST_TEST(messages.back() ==
             "r.csv:101: 3 more things are wrong: mend those above first");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

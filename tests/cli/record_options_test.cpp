#include "cli/record_options.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

RecordOptions record_options_of(const std::vector<std::string>& arguments) {
  const auto asked = parse_record_options(arguments);
  BOOST_TEST_REQUIRE(asked.has_value());
  BOOST_TEST_REQUIRE(std::holds_alternative<RecordOptions>(*asked));
  return std::get<RecordOptions>(*asked);
}

BOOST_AUTO_TEST_SUITE(record_options)

BOOST_AUTO_TEST_CASE(record_is_the_first_word_that_is_no_option) {
  using Words = std::vector<std::string>;
  for (const Words& words :
       {Words{"record", "list", "b.db"}, Words{"--json", "record", "list", "b.db"},
        Words{"--units", "in", "record"}, Words{"--units=in", "record"}})
    BOOST_TEST(asks_for_record(words));
  for (const Words& words :
       {Words{}, Words{"fit", "record"}, Words{"--out", "record", "job", "j.toml"},
        Words{"--help"}})
    BOOST_TEST(!asks_for_record(words));
}

BOOST_AUTO_TEST_CASE(options_stand_before_or_after_the_words) {
  using Words = std::vector<std::string>;
  for (const Words& words :
       {Words{"--hull", "12", "--leak", "port:100", "--json", "record", "add", "b.db",
              "j.toml", "--litres=2.15", "--leak", "transom:4 in", "--holes", "109",
              "--readings", "r.csv", "--units", "in"},
        Words{"record", "add", "b.db", "j.toml", "--hull", "12", "--leak", "port:100",
              "--leak", "transom:4 in", "--litres", "2.15", "--holes", "109",
              "--readings", "r.csv", "--units", "in", "--json"}}) {
    const RecordOptions options = record_options_of(words);
    BOOST_TEST((options.command == RecordCommand::Add));
    BOOST_TEST(options.record == "b.db");
    BOOST_TEST(options.joint == "j.toml");
    BOOST_TEST(options.hull.value() == 12);
    BOOST_TEST(options.litres.value() == 2.15);
    BOOST_TEST(options.holes.value() == 109);
    BOOST_TEST(options.readings.value() == "r.csv");
    BOOST_TEST_REQUIRE(options.leaks.size() == 2U);
    BOOST_TEST((options.leaks[1].side == SideName::Transom));
    BOOST_TEST(options.leaks[1].girth == "4 in");
    BOOST_TEST((options.unit == LengthUnit::Inches));
    BOOST_TEST(options.json);
  }
}

BOOST_AUTO_TEST_CASE(wrong_command_lines_are_told_what_would_be_right) {
  const struct {
    std::vector<std::string> arguments;
    std::string message;
  } rows[] = {
      {{"record"}, "record needs a second word: one of add, list, show, chart"},
      {{"record", "lst", "b.db"}, "unknown command record lst: did you mean list?"},
      {{"record", "list"}, "record list needs its files: sheerlap record list DB"},
      {{"record", "add", "b.db", "--hull", "1", "--holes", "3"},
       "record add needs its files: sheerlap record add DB JOINT.toml --hull NUMBER"},
      {{"record", "add", "b.db", "j.toml", "--holes", "3"},
       "record add needs the boat's number: sheerlap record add DB JOINT.toml --hull "
       "NUMBER"},
      {{"record", "add", "b.db", "j.toml", "--hull", "3"},
       "record add has nothing to add: --readings, --litres, --holes or --leak, one or "
       "more"},
      {{"record", "show", "b.db", "--hull", "0"},
       "--hull is \"0\": a whole number from 1 to 999999999"},
      {{"record", "show", "b.db", "--hull", "12a"},
       "--hull is \"12a\": a whole number from 1 to 999999999"},
      {{"record", "add", "b.db", "j.toml", "--hull", "1", "--litres", "nan"},
       "--litres is \"nan\": a number from 0 to 1000, such as 2.15: is that in "
       "litres?"},
      {{"record", "add", "b.db", "j.toml", "--hull", "1", "--litres", "2850"},
       "--litres is \"2850\": a number from 0 to 1000, such as 2.15: is that in "
       "litres?"},
      {{"record", "add", "b.db", "j.toml", "--hull", "1", "--holes", "100001"},
       "--holes is \"100001\": a whole number from 0 to 100000"},
      {{"record", "add", "b.db", "j.toml", "--hull", "1", "--leak", "left:20"},
       "--leak is \"left:20\": SIDE:GIRTH, such as starboard:2310"},
      {{"record", "add", "b.db", "j.toml", "--hull", "1", "--leak", "port"},
       "--leak is \"port\": SIDE:GIRTH, such as starboard:2310"},
      {{"record", "list", "b.db", "--out", "d"},
       "--out is for the files of record chart: leave it out"},
      {{"record", "list", "b.db", "--hull", "3"},
       "--hull is for record add and record show: leave it out"},
      {{"record", "chart", "b.db", "--holes", "3"},
       "--readings, --litres, --holes and --leak are for record add: leave them out"},
      {{"record", "list", "b.db", "c.db"},
       "c.db is an argument too many: see sheerlap record --help"},
      {{"record", "list", "b.db", "--jsn"},
       "unknown option --jsn: did you mean --json?"},
      {{"record", "list", "b.db", "--units", "cm"},
       "--units cm is not known: mm or in"},
      {{"record", "chart", "b.db", "--out", ""}, "--out is empty: name a folder"},
  };
  for (const auto& row : rows) {
    const auto asked = parse_record_options(row.arguments);
    BOOST_TEST_CONTEXT(row.message) {
      BOOST_TEST_REQUIRE(!asked.has_value());
      BOOST_TEST(asked.error().front().message == row.message);
    }
  }
}

BOOST_AUTO_TEST_CASE(help_and_version_are_given_in_place_of_any_work) {
  for (const char* word : {"--help", "-h", "--version"}) {
    const auto asked = parse_record_options({"record", word});
    BOOST_TEST_REQUIRE(asked.has_value());
    BOOST_TEST(std::holds_alternative<TextAsked>(*asked));
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

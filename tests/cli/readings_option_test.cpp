#include "cli/readings_option.h"

#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "cli/options.h"

namespace sheerlap {
namespace {

std::vector<std::string> refusals(const std::vector<std::string>& arguments) {
  const auto asked = parse_options(arguments);
  std::vector<std::string> messages;
  if (!asked)
    for (const Error& error : asked.error()) messages.push_back(error.message);
  return messages;
}

BOOST_AUTO_TEST_SUITE(readings_option)

BOOST_AUTO_TEST_CASE(file_and_state_are_taken_as_written) {
  for (const char* command : {"fit", "adhesive", "schedule", "strength"}) {
    const auto asked =
        parse_options({command, "j.toml", "--state", "held", "--readings=hull 7.csv"});
    BOOST_TEST_REQUIRE(asked.has_value());
    const Options& options = std::get<Options>(*asked);
    BOOST_TEST(options.readings.value() == "hull 7.csv");
    BOOST_TEST((options.state == ReadingState::Held));
  }
  const auto none = parse_options({"fit", "j.toml"});
  BOOST_TEST(!std::get<Options>(*none).readings.has_value());
  BOOST_TEST(!std::get<Options>(*none).state.has_value());
}

BOOST_AUTO_TEST_CASE(a_hole_to_explain_is_found_behind_the_readings) {
  const auto asked =
      parse_options({"schedule", "j.toml", "--readings", "h.csv", "--explain", "S14"});
  BOOST_TEST_REQUIRE(asked.has_value());
  BOOST_TEST(std::get<Options>(*asked).explain_hole.value() == "S14");
}

BOOST_AUTO_TEST_CASE(commands_for_all_boats_refuse_one_and_say_what_to_run) {
  const struct {
    const char* command;
    const char* message;
  } rows[] = {
      {"layout",
       "--readings is for one boat, and layout places the holes of all of them: leave "
       "it out, or run schedule"},
      {"order",
       "--readings is for one boat, and order buys for the run of boats: run adhesive "
       "for what this one takes, schedule for its fasteners"},
      {"job",
       "--readings is for one boat, and job's papers and jigs are those of all boats: "
       "run fit, adhesive, schedule or strength"},
      {"check", "--readings is for fit, adhesive, schedule and strength: leave it out"},
      {"new", "--readings is for fit, adhesive, schedule and strength: leave it out"},
  };
  for (const auto& row : rows)
    BOOST_TEST((refusals({row.command, "j.toml", "--readings", "h.csv"}) ==
                std::vector<std::string>{row.message}),
               row.command);
}

BOOST_AUTO_TEST_CASE(a_state_alone_an_unknown_one_and_an_empty_name_are_told) {
  BOOST_TEST((refusals({"fit", "j.toml", "--state", "wet"}) ==
              std::vector<std::string>{
                  "--state says which readings count: give --readings FILE with it",
                  "--state wet is not known: dry, held or after"}));
  BOOST_TEST((refusals({"fit", "j.toml", "--readings", ""}) ==
              std::vector<std::string>{"--readings is empty: name a reading file"}));
  BOOST_TEST((refusals({"strength", "j.toml", "--options", "--readings", "h.csv"}) ==
              std::vector<std::string>{"--options chooses for all boats and --readings "
                                       "is for one: one at a time"}));
  BOOST_TEST((refusals({"fit", "j.toml", "--reading", "h.csv"}).front() ==
              "unknown option --reading: did you mean --readings?"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

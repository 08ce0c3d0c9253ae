#include "cli/tolerance_options.h"

#include <boost/test/unit_test.hpp>

#include "cli/options.h"

namespace sheerlap {
namespace {

using Words = std::vector<std::string>;

BOOST_AUTO_TEST_SUITE(tolerance_options)

BOOST_AUTO_TEST_CASE(boats_seed_and_threads_are_taken_from_the_command_line) {
  const auto asked = parse_options(
      {"--boats", "400", "tolerance", "j.toml", "--seed=7", "--threads", "2"});
  BOOST_TEST_REQUIRE(asked.has_value());
  const Options& options = std::get<Options>(*asked);
  BOOST_TEST((options.command == Command::Tolerance));
  BOOST_TEST(options.target == "j.toml");
  BOOST_TEST(options.tolerance.boats.value() == 400U);
  BOOST_TEST(options.tolerance.seed.value() == 7U);
  BOOST_TEST(options.tolerance.threads.value() == 2U);
}

BOOST_AUTO_TEST_CASE(what_is_not_given_is_left_to_the_file_and_the_machine) {
  const auto asked = parse_options({"tolerance", "j.toml"});
  BOOST_TEST_REQUIRE(asked.has_value());
  const ToleranceOptions& options = std::get<Options>(*asked).tolerance;
  BOOST_TEST(!options.boats.has_value());
  BOOST_TEST(!options.seed.has_value());
  BOOST_TEST(!options.threads.has_value());
}

BOOST_AUTO_TEST_CASE(wrong_numbers_are_told_what_would_be_right) {
  const struct {
    Words arguments;
    std::string message;
  } rows[] = {
      {{"--boats", "99"}, "--boats is \"99\": a whole number from 100 to 1000000"},
      {{"--boats", "1e4"}, "--boats is \"1e4\": a whole number from 100 to 1000000"},
      {{"--boats=-5"}, "--boats is \"-5\": a whole number from 100 to 1000000"},
      {{"--boats", ""}, "--boats is \"\": a whole number from 100 to 1000000"},
      {{"--boats", "99999999999999999999"},
       "--boats is \"99999999999999999999\": a whole number from 100 to 1000000"},
      {{"--seed", "0"}, "--seed is \"0\": a whole number from 1 to 1000000"},
      {{"--threads", "0"}, "--threads is \"0\": a whole number from 1 to 256"},
      {{"--threads", "two"}, "--threads is \"two\": a whole number from 1 to 256"},
      {{"--seed", "1", "--seed", "2"},
       "--seed takes one value, and is given once: see sheerlap --help"},
      {{"--record", ""}, "--record is empty: name a record of boats"},
      {{"--boat", "200"}, "unknown option --boat: did you mean --boats?"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.message) {
      Words words{"tolerance", "j.toml"};
      words.insert(words.end(), row.arguments.begin(), row.arguments.end());
      const auto asked = parse_options(words);
      BOOST_TEST_REQUIRE(!asked.has_value());
      BOOST_TEST(asked.error()[0].message == row.message);
    }
}

BOOST_AUTO_TEST_CASE(other_commands_take_none_of_them) {
  for (const char* option : {"--boats", "--seed", "--threads"}) {
    const auto asked = parse_options({"fit", "j.toml", option, "200"});
    BOOST_TEST_REQUIRE(!asked.has_value());
    BOOST_TEST_REQUIRE(asked.error().size() == 1U);
    BOOST_TEST(
        asked.error()[0].message ==
        "--boats, --seed and --threads are for tolerance: leave them out, or run "
        "tolerance");
  }
}

BOOST_AUTO_TEST_CASE(a_record_is_for_tolerance_and_for_the_page_of_job) {
  const auto asked = parse_options({"fit", "j.toml", "--record", "boats.db"});
  BOOST_TEST_REQUIRE(!asked.has_value());
  BOOST_TEST(asked.error()[0].message ==
             "--record is for tolerance and job: leave it out, or run one of them");
  const auto job = parse_options({"job", "j.toml", "--record", "boats.db"});
  BOOST_TEST_REQUIRE(job.has_value());
  BOOST_TEST(std::get<Options>(*job).tolerance.record.value() == "boats.db");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

// Runs the real program on one boat's readings, as users and scripts do.
#include "cli/boat_file.h"

#include <boost/test/unit_test.hpp>
#include <nlohmann/json.hpp>

#include "tests/cli/program.h"

namespace sheerlap {
namespace {

using nlohmann::json;

/// A folder with the demo boat and the readings of one hull.
struct BoatDemo : TestFolder {
  BoatDemo() {
    put_boat("demo-640");
    put("hull-7.csv",
        "side,station,mark,gap_top,gap_low,state\n"
        "starboard,7,,2.5,4.1,dry\n"
        "starboard,9,,0.2,1.9,dry\n"
        "starboard,9,,0.8,2.5,held\n"
        "port,9,,2.6,,held\n"
        "transom,,T08,2.5,4.3,held\n");
  }
  Outcome run(std::vector<std::string> words) const {
    RunOptions options;
    options.folder = path();
    return run_program(words, options);
  }
  Outcome on_boat(const std::string& command,
                  std::vector<std::string> more = {}) const {
    std::vector<std::string> words{command, "joint.toml", "--readings", "hull-7.csv"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
};

BOOST_FIXTURE_TEST_SUITE(boat_file, BoatDemo)

BOOST_AUTO_TEST_CASE(each_report_says_whose_boat_it_is_of_and_in_which_state) {
  for (const char* command : {"fit", "adhesive", "schedule", "strength"}) {
    const Outcome read = on_boat(command);
    BOOST_TEST(read.err.empty(), read.err);
    const std::string first = read.out.substr(0, read.out.find("STOP"));
    BOOST_TEST(first.find("hull-7.csv, read") != std::string::npos, first);
    BOOST_TEST(first.find("held") != std::string::npos, first);
    BOOST_TEST(read.out.find("This boat\n") != std::string::npos);
    BOOST_TEST(run({command, "joint.toml"}).out.find("This boat") == std::string::npos);
  }
}

BOOST_AUTO_TEST_CASE(the_result_tells_of_the_boat_and_where_a_reading_stands) {
  const Outcome read = on_boat("fit", {"--json", "--state", "dry"});
  BOOST_TEST(read.status == 1, read.err);
  const json result = json::parse(read.out);
  const json& boat = result["boat"];
  BOOST_TEST(boat["readings_file"] == "hull-7.csv");
  BOOST_TEST(boat["state"] == "dry");
  BOOST_TEST(boat["accepted"] == false);
  BOOST_TEST_REQUIRE(boat["corrections"].size() == 2U);
  BOOST_TEST(boat["corrections"][1]["read_top"] == 0.2);
  BOOST_TEST((boat["unread"] == json{"port", "transom"}));
  BOOST_TEST(boat["non_conformances"][0]["name"] == "NC1");
  // its readings do not say where the mould held it
  BOOST_TEST(result["seating"]["squeeze"][0]["to_mould"].is_null());
  BOOST_TEST(read.out.find("yours: hull-7.csv:3") != std::string::npos);
  BOOST_TEST(run({"fit", "joint.toml", "--json"}).out.find("\"boat\"") ==
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_the_readings_is_told_with_file_and_line) {
  put("hull-7.csv",
      "side,girth,gap_top,state\nport,1200,2.5,dry\nport,12000,2,dry\n"
      "transom,900,2,dry\n");
  const Outcome refused = on_boat("fit");
  BOOST_TEST(refused.status == 2);
  BOOST_TEST(refused.out.empty());
  BOOST_TEST(refused.err ==
             "hull-7.csv:3: girth 12000 mm is not on port: its drill line runs from 0 "
             "to 6760.4334 mm\n"
             "hull-7.csv:4: girth 900 mm on transom is in the opening outboard well: "
             "there is no joint from 726 mm to 1566 mm\n");
  put("hull-7.csv", "side,girth,gap_tpo,state\nport,1200,2.5,dry\n");
  BOOST_TEST(on_boat("adhesive").err.starts_with("hull-7.csv:1: unknown column "));
  BOOST_TEST(run({"fit", "joint.toml", "--readings", "none.csv"}).status == 3);
}

BOOST_AUTO_TEST_CASE(a_state_that_was_not_read_is_told_with_those_that_were) {
  const Outcome refused = on_boat("schedule", {"--state", "after"});
  BOOST_TEST(refused.status == 2);
  BOOST_TEST(refused.err ==
             "hull-7.csv: no reading has the state after: there is dry, held\n");
}

BOOST_AUTO_TEST_CASE(a_joint_without_what_the_command_needs_is_told_as_ever) {
  put("joint.toml",
      "title = \"x\"\n[sheer]\nfile = \"sheer.csv\"\n[readings]\ngap_min = 3\n"
      "gap_max = 2\nstpe = 1\n");
  const Outcome refused = on_boat("fit");
  BOOST_TEST(refused.status == 2);
  BOOST_TEST(refused.err.find("joint.toml:7: unknown key \"stpe\" in [readings]: did "
                              "you mean step?\n") != std::string::npos,
             refused.err);
  BOOST_TEST(refused.err.find("joint.toml:6: [readings] gap_max is 2 mm and gap_min 3 "
                              "mm: gap_max is the larger\n") != std::string::npos,
             refused.err);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

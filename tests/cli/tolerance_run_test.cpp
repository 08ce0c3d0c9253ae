// Runs the real program on made-up boats, as users and scripts do.
#include "cli/tolerance_run.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "tests/cli/boat_folder.h"
#include "tests/cli/program.h"

namespace sheerlap {
namespace {

using nlohmann::json;

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

std::string demo_record() {
  return (fixtures_folder() / "demo-640" / "record" / "boats.db").string();
}

struct ToleranceDemo : TestFolder {
  ToleranceDemo() { put_boat("demo-640"); }
  Outcome run(std::vector<std::string> words) const {
    RunOptions options;
    options.folder = path();
    words.insert(words.begin(), {"tolerance", "joint.toml"});
    return run_program(words, options);
  }
  json result(std::vector<std::string> words) const {
    words.push_back("--json");
    const Outcome outcome = run(words);
    BOOST_TEST(outcome.err.empty(), outcome.err);
    const json parsed = json::parse(outcome.out, nullptr, false);
    BOOST_TEST_REQUIRE(!parsed.is_discarded());
    return parsed;
  }
  std::string joint_text() const {
    std::ifstream file(path() / "joint.toml");
    return {std::istreambuf_iterator<char>(file), {}};
  }
};

BOOST_FIXTURE_TEST_SUITE(tolerance_run, ToleranceDemo)

BOOST_AUTO_TEST_CASE(any_number_of_threads_gives_the_same_bytes) {
  const Outcome one = run({"--boats", "3000", "--threads", "1"});
  const Outcome three = run({"--boats", "3000", "--threads", "3"});
  BOOST_TEST(holds(one.out, "3000 boats made up from seed 640"));
  BOOST_TEST(one.out == three.out);
  BOOST_TEST(run({"--boats", "3000", "--threads", "2", "--json"}).out ==
             run({"--boats", "3000", "--json"}).out);
}

BOOST_AUTO_TEST_CASE(json_has_the_boats_beside_perimeter_checks_and_reasons) {
  const json found = result({"--boats", "500", "--seed", "7"});
  BOOST_TEST(found["format"] == "sheerlap/1");
  BOOST_TEST(found["tolerance"]["boats"] == 500);
  BOOST_TEST(found["tolerance"]["seed"] == 7);
  for (const char* part : {"perimeter", "checks", "explain", "defaults"})
    BOOST_TEST(found.contains(part), part);
  BOOST_TEST(!found.contains("schedule"));
  const json& shares = found["tolerance"]["shares"];
  double sum = 0;
  for (const char* share : {"unsqueezed", "squeezed", "beyond", "never"})
    sum += shares[share]["value"].get<double>();
  BOOST_TEST(sum == 1, boost::test_tools::tolerance(1e-12));  // property
}

BOOST_AUTO_TEST_CASE(another_seed_makes_other_boats_and_the_same_the_same) {
  const json first = result({"--boats", "500", "--seed", "7"})["tolerance"];
  BOOST_TEST(first == result({"--boats", "500", "--seed", "7"})["tolerance"]);
  BOOST_TEST(first["margin_mean"] !=
             result({"--boats", "500", "--seed", "8"})["tolerance"]["margin_mean"]);
}

BOOST_AUTO_TEST_CASE(a_quiet_run_prints_the_verdict_alone) {
  const Outcome quiet = run({"--boats", "200", "--quiet"});
  BOOST_TEST(std::count(quiet.out.begin(), quiet.out.end(), '\n') == 1);
  const auto share = quiet.out.find(" Of 100 boats ");
  BOOST_TEST_REQUIRE(share != std::string::npos);
  const std::string report = run({"--boats", "200"}).out;
  BOOST_TEST(report.starts_with("Demo 640: how many boats in a hundred will fit\n" +
                                quiet.out.substr(0, share) + "\n"));
  BOOST_TEST(holds(report, quiet.out.substr(share + 1, 26)));
}

BOOST_AUTO_TEST_CASE(fewer_boats_than_are_wanted_end_it_with_1) {
  const std::string text = joint_text();
  BOOST_TEST(run({"--boats", "200"}).status == 0);
  put("joint.toml", replaced(text, "boats = 10000", "boats = 10000\nwanted = 99"));
  const Outcome few = run({"--boats", "200"});
  BOOST_TEST(few.status == 1);
  BOOST_TEST(holds(few.out, "FAIL tolerance.go_on"));
  put("joint.toml", replaced(text, "boats = 10000", "boats = 10000\nwanted = 10"));
  BOOST_TEST(run({"--boats", "200"}).status == 0);
  put("joint.toml", replaced(text, "boats = 10000", "boats = 10000\nwanted = 101"));
  BOOST_TEST(run({"--boats", "200"}).status == 2);
}

BOOST_AUTO_TEST_CASE(inches_are_for_people_alone) {
  const Outcome inches = run({"--boats", "200", "--units", "in"});
  BOOST_TEST(holds(inches.out, "gap window of 0.039"));
  BOOST_TEST(run({"--boats", "200", "--units", "in", "--json"}).out ==
             run({"--boats", "200", "--json"}).out);
}

BOOST_AUTO_TEST_CASE(reasons_close_the_report_when_asked_for) {
  const Outcome asked = run({"--boats", "200", "--explain"});
  BOOST_TEST(holds(asked.out, "in the result: tolerance.shares.on.value"));
  BOOST_TEST(!holds(asked.out, "in the result: perimeter"));
}

BOOST_AUTO_TEST_CASE(a_missing_table_is_named) {
  const std::string text = joint_text();
  put("joint.toml", text.substr(0, text.find("[tolerance]")));
  const Outcome outcome = run({});
  BOOST_TEST(outcome.status == 2);
  BOOST_TEST(outcome.out.empty());
  BOOST_TEST(outcome.err ==
             "joint.toml:1: [tolerance] is missing: `tolerance` needs its boats, and "
             "an [[error]] for each thing that goes wrong\n");
}

BOOST_AUTO_TEST_CASE(the_hulls_face_is_had_from_the_record_that_is_named) {
  const std::string numbers = "mean = 0\nspread = 0.4\ncorrelation = 700";
  put("joint.toml",
      replaced(joint_text(), numbers, "from_record = true\ncorrelation = 700"));
  const json found = result({"--boats", "200", "--record", demo_record()})["tolerance"];
  BOOST_TEST(found["record"]["boats"] == 30);
  BOOST_TEST(found["record"]["state"] == "held");
  BOOST_TEST(found["errors"][5]["mean"] == 0);
  BOOST_TEST(found["record"]["least"].get<double>() <
             found["record"]["greatest"].get<double>());
  const Outcome text = run({"--boats", "200", "--record", demo_record()});
  BOOST_TEST(holds(text.out, "The hull's face is that of 30 boats built"));
  BOOST_TEST(holds(run({"--boats", "200"}).err, "name the record of the boats built"));
  BOOST_TEST(holds(run({"--record", "no.db"}).err, "no.db: there is no such record"));
}

BOOST_AUTO_TEST_CASE(the_correlation_is_had_from_the_record_where_none_is_given) {
  put("joint.toml", replaced(joint_text(), "mean = 0\nspread = 0.4\ncorrelation = 700",
                             "from_record = true"));
  const json found = result({"--boats", "200", "--record", demo_record()})["tolerance"];
  const double correlation = found["errors"][5]["correlation"];
  const json& told = found["record"]["correlation"];
  BOOST_TEST(correlation == told["value"].get<double>());
  BOOST_TEST(told["low"].get<double>() < correlation);
  BOOST_TEST(correlation < told["high"].get<double>());
}

BOOST_AUTO_TEST_CASE(a_record_that_does_not_serve_is_refused) {
  BOOST_TEST(holds(run({"--record", demo_record()}).err, "no [[error]] asks for it"));
  const std::string text = replaced(
      joint_text(), "mean = 0\nspread = 0.4\ncorrelation = 700", "from_record = true");
  put("joint.toml", replaced(text, "\"Demo 640\"", "\"Another\""));
  BOOST_TEST(holds(run({"--record", demo_record()}).err,
                   "holds boats of \"Demo 640\", not of \"Another\""));
}

BOOST_AUTO_TEST_CASE(a_full_device_is_reported_and_ends_with_3) {
  RunOptions options;
  options.folder = path();
  options.out = "/dev/full";
  const Outcome outcome =
      run_program({"tolerance", "joint.toml", "--boats", "200"}, options);
  BOOST_TEST(outcome.status == 3);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

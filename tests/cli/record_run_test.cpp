// Runs the real program on records, as users and scripts do.
#include "cli/record_run.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <nlohmann/json.hpp>

#include "tests/cli/program.h"

namespace sheerlap {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

/// Whether two results are alike, numbers to the rounding of a processor's library.
bool alike(const json& one, const json& other) {
  if (one.is_number() && other.is_number())
    return std::abs(one.get<double>() - other.get<double>()) <=
           1e-9 * std::max(1., std::abs(other.get<double>()));
  if (!one.is_structured() || one.type() != other.type() || one.size() != other.size())
    return one == other;
  for (auto a = one.begin(), b = other.begin(); a != one.end(); ++a, ++b)
    if ((one.is_object() && a.key() != b.key()) || !alike(*a, *b)) return false;
  return true;
}

/// A folder with the demo boat and readings of two places.
struct RecordDemo : TestFolder {
  RecordDemo() {
    put_boat("demo-640");
    put("r.csv",
        "side,girth,station,gap_top,gap_low,state\n"
        "port,1200,,2.5,4.1,dry\nstarboard,,9,0.8,,dry\n");
  }
  Outcome run(std::vector<std::string> words) const { return run_as(words, {}); }
  Outcome run_as(std::vector<std::string> words, RunOptions options) const {
    options.folder = path();
    words.insert(words.begin(), "record");
    return run_program(words, options);
  }
  Outcome add(const std::string& hull) const {
    return run({"add", "b.db", "joint.toml", "--hull", hull, "--readings", "r.csv"});
  }
  json list() const { return json::parse(run({"list", "b.db", "--json"}).out); }
};

BOOST_FIXTURE_TEST_SUITE(record_run, RecordDemo)

BOOST_AUTO_TEST_CASE(a_boat_that_was_added_is_listed_and_shown) {
  const Outcome added = run({"add", "b.db", "joint.toml", "--hull", "12", "--readings",
                             "r.csv", "--litres", "2.15", "--leak", "port:1250"});
  BOOST_TEST(added.status == 0, added.err);
  BOOST_TEST(added.err.empty());
  BOOST_TEST(added.out.starts_with(
      "Demo 640: hull 12 is new, 2 readings and 1 leak added.\n"));
  BOOST_TEST(list()["boats"][0]["readings"] == 2);
  const Outcome shown = run({"show", "b.db", "--hull", "12", "--json"});
  BOOST_TEST(shown.status == 1);  // 0.8 is below the paste's 1 mm
  const json boat = json::parse(shown.out)["boat"];
  BOOST_TEST(boat["litres"] == 2.15);
  BOOST_TEST(boat["readings"][0]["top"] == "tight");
  BOOST_TEST(boat["readings"][0]["gap_low"].is_null());
  const json marks = boat["leaks"][0]["marks"];
  BOOST_TEST_REQUIRE(marks.size() == 2U);
  BOOST_TEST((marks[0]["girth"] <= 1250.0 && marks[1]["girth"] > 1250.0));
}

BOOST_AUTO_TEST_CASE(what_is_wrong_is_told_with_file_and_line_and_nothing_is_kept) {
  put("r.csv",
      "side,girth,gap_top,state\nport,1200,2.5,dry\nport,12000,2,dry\n"
      "transom,900,2,dry\n");
  const Outcome run = add("12");
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.out.empty());
  BOOST_TEST(run.err ==
             "r.csv:3: girth 12000 mm is not on port: its drill line runs from 0 to "
             "6760.4334 mm\n"
             "r.csv:4: girth 900 mm on transom is in the opening outboard well: there "
             "is no joint from 726 mm to 1566 mm\n");
  BOOST_TEST(!fs::exists(path() / "b.db"));
}

BOOST_AUTO_TEST_CASE(a_gap_that_no_joint_has_is_refused_with_its_line) {
  put("r.csv", "side,girth,gap_top,state\nport,1200,100,dry\nport,1300,250,dry\n");
  const Outcome run = add("12");
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.err == "r.csv:3: gap_top is 250 mm: 100 mm at most; is that in mm?\n");
  BOOST_TEST(!fs::exists(path() / "b.db"));
}

BOOST_AUTO_TEST_CASE(a_boat_is_not_written_over) {
  BOOST_TEST(add("12").status == 0);
  const Outcome again = add("12");
  BOOST_TEST(again.status == 2);
  BOOST_TEST(again.err ==
             "r.csv:2: hull 12 has girth 1200 mm on port dry already: leave the row "
             "out\n"
             "r.csv:3: hull 12 has station 9 on starboard dry already: leave the row "
             "out\n");
  const Outcome more =
      run({"add", "b.db", "joint.toml", "--hull", "12", "--holes", "9"});
  BOOST_TEST(more.status == 0);
  BOOST_TEST(list()["boats"][0]["holes"] == 9);
  BOOST_TEST(list()["boats"][0]["readings"] == 2);
}

BOOST_AUTO_TEST_CASE(a_record_that_is_not_there_or_lacks_a_boat_is_told) {
  const Outcome none = run({"list", "no.db"});
  BOOST_TEST(none.status == 3);
  BOOST_TEST(none.err == "no.db: there is no such record: record add makes it\n");
  BOOST_TEST(add("12").status == 0);
  const Outcome lacks = run({"show", "b.db", "--hull", "13"});
  BOOST_TEST(lacks.status == 2);
  BOOST_TEST(lacks.err ==
             "b.db: there is no hull 13: record list shows those there are\n");
}

BOOST_AUTO_TEST_CASE(a_record_that_was_tampered_with_is_shown_or_refused_by_name) {
  BOOST_TEST(add("5").status == 0);
  const auto tamper = [&](const std::string& sql) {
    RunOptions options;
    options.folder = path();
    options.program = "sqlite3";
    BOOST_TEST(run_program({"b.db", sql}, options).status == 0);
  };
  tamper("DELETE FROM readings WHERE hull = 5");
  const Outcome shown = run({"show", "b.db", "--hull", "5"});
  BOOST_TEST(shown.status == 0, shown.err);
  BOOST_TEST(shown.out.find("No gap was read.") != std::string::npos, shown.out);
  BOOST_TEST(shown.out.find("(no reading of it is kept)") != std::string::npos);
  BOOST_TEST(add("6").status == 0);
  tamper("UPDATE readings SET gap_top_mm = 9e999");
  for (const char* command : {"list", "chart"}) {
    const Outcome refused = run({command, "b.db"});
    BOOST_TEST(refused.status == 3);
    BOOST_TEST(refused.err ==
               "b.db: it has a reading whose numbers cannot be true (hull 6): the file "
               "is damaged, take the last good copy of it\n");
  }
}

BOOST_AUTO_TEST_CASE(charts_are_written_all_of_them_with_their_numbers) {
  for (const char* hull : {"1", "2", "3"}) BOOST_TEST(add(hull).status == 0);
  const Outcome charts = run({"chart", "b.db", "--out", "charts"});
  BOOST_TEST(charts.status == 1, charts.err);  // 0.8 is below the paste's 1 mm
  BOOST_TEST(
      run({"chart", "b.db", "--quiet"}).out ==
      "LOOK: too few boats to tell a drift or a step (8 are needed), and gaps are "
      "outside the window at 1 place: starboard station 9, top (3 of 3 boats).\n");
  const auto files = files_under(path() / "charts");
  for (const char* name :
       {"charts.csv", "points.csv", "port-girth-1200-dry-top.svg",
        "port-girth-1200-dry-low.svg", "starboard-station-9-dry-top.svg"})
    BOOST_TEST(files.contains(name), name);
  BOOST_TEST(files.size() == 5U);
}

BOOST_AUTO_TEST_CASE(terminals_at_once_lose_no_boat) {
  // the shell starts four at a time
  put("all.sh",
      "for hull in 1 2 3 4 5 6 7 8; do\n"
      "  \"$1\" record add b.db joint.toml --quiet --hull $hull --readings r.csv &\n"
      "done\nfor job in $(jobs -p); do wait $job || exit 1; done\n");
  RunOptions options;
  options.folder = path();
  options.program = "bash";
  const Outcome all = run_program({"all.sh", program_path().string()}, options);
  BOOST_TEST(all.status == 0, all.err);
  BOOST_TEST(list()["boats"].size() == 8U);
}

BOOST_AUTO_TEST_CASE(a_program_killed_while_adding_leaves_a_sound_record) {
  BOOST_TEST(add("1").status == 0);
  std::size_t boats = 1;
  for (int delay_us = 5'000; delay_us < 120'000; delay_us += 7'000) {
    RunOptions killed;
    killed.kill_after_us = delay_us;
    const Outcome run = run_as({"add", "b.db", "joint.toml", "--hull",
                                std::to_string(delay_us), "--readings", "r.csv"},
                               killed);
    const json all = list()["boats"];
    BOOST_TEST((all.size() == boats || all.size() == boats + 1));
    if (run.status == 0 || !run.out.empty()) BOOST_TEST(all.size() == boats + 1);
    boats = all.size();
    for (const json& boat : all) BOOST_TEST(boat["readings"] == 2);
  }
}

BOOST_AUTO_TEST_CASE(a_full_disk_is_told_and_leaves_the_record_as_it_was) {
  BOOST_TEST(add("1").status == 0);
  std::string text = "side,girth,gap_top,state\n";
  for (int girth = 1; girth <= 2000; ++girth)
    text += "port," + std::to_string(girth) + ",2.5,dry\n";
  put("r.csv", text);
  const auto before = list();
  // no file may grow by more than a page or two
  RunOptions full;
  const auto size = fs::file_size(path() / "b.db") + 8192;
  full.before = {"prlimit", "--fsize=" + std::to_string(size)};
  const Outcome run =
      run_as({"add", "b.db", "joint.toml", "--hull", "2", "--readings", "r.csv"}, full);
  BOOST_TEST(run.status == 3);
  BOOST_TEST(run.err.find("b.db: ") == 0U, run.err);
  BOOST_TEST(run.err.find("nothing of this command was kept: make room on the disk and "
                          "give it again\n") != std::string::npos,
             run.err);
  BOOST_TEST((list() == before));
  BOOST_TEST(add("2").status == 0);
  BOOST_TEST(list()["boats"].size() == 2U);
}

BOOST_AUTO_TEST_CASE(the_demos_record_is_what_its_files_make) {
  // property: adding the 30 reading files gives the record that is kept beside them
  const fs::path folder = fixtures_folder() / "demo-640" / "record";
  RunOptions options;
  options.folder = path();
  options.program = "bash";
  const std::string made = (path() / "made.db").string();
  const Outcome all = run_program(
      {(folder / "add-all.sh").string(), program_path().string(), made}, options);
  BOOST_TEST(all.status == 0, all.err);
  const std::string kept = (path() / "kept.db").string();
  fs::copy_file(folder / "boats.db", kept);
  const Outcome ours = run({"chart", made, "--json"});
  const Outcome theirs = run({"chart", kept, "--json"});
  BOOST_TEST(ours.status == 1);
  const json charts = json::parse(ours.out);
  BOOST_TEST(alike(charts, json::parse(theirs.out)));
  for (const json& chart : charts["charts"]) {
    // derived: the files open the port side at stations 9, 10 and 11, and nothing else
    const std::string name = chart["name"];
    const bool moves =
        chart["side"] == "port" && (name == "9" || name == "10" || name == "11");
    BOOST_TEST((chart["drift"]["found"] == moves), name);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

// Runs the real program, as users and scripts do.
#include "tests/cli/program.h"

#include <unistd.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <nlohmann/json.hpp>

namespace sheerlap {
namespace {

namespace fs = std::filesystem;

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

std::size_t lines_in(const std::string& text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

/// A folder with the demo boat, which has a check that fails.
struct DemoFolder : TestFolder {
  DemoFolder() { put_boat("demo-640"); }
  RunOptions here() const {
    RunOptions options;
    options.folder = path();
    return options;
  }
};

BOOST_FIXTURE_TEST_SUITE(program, DemoFolder)

BOOST_AUTO_TEST_CASE(a_job_whose_checks_fail_is_written_and_ends_with_1) {
  const Outcome run = run_program({"job", "joint.toml", "--out", "out"}, here());
  BOOST_TEST(run.status == 1);
  BOOST_TEST(run.err.empty(), run.err);
  const auto files = files_under(path() / "out");
  for (const char* name :
       {"summary.txt", "schedule-starboard.csv", "schedule-port.csv",
        "schedule-transom.csv", "order.csv", "fit.csv", "result.json"})
    BOOST_TEST(files.contains(name), name);
  BOOST_TEST(run.out.starts_with(files.at("summary.txt")));
}

BOOST_AUTO_TEST_CASE(the_documents_of_a_job_go_into_a_folder_named_after_its_file) {
  fs::rename(path() / "joint.toml", path() / "runabout.toml");
  BOOST_TEST(run_program({"job", "runabout.toml"}, here()).status == 1);
  BOOST_TEST(fs::exists(path() / "runabout-joint" / "summary.txt"));
}

BOOST_AUTO_TEST_CASE(the_same_input_gives_the_same_bytes) {
  const Outcome first = run_program({"job", "joint.toml", "--out", "a"}, here());
  RunOptions elsewhere = here();
  elsewhere.variables = {"TZ=Pacific/Auckland", "LC_ALL=de_DE.UTF-8", "COLUMNS=40"};
  BOOST_TEST(run_program({"job", "joint.toml", "--out", "b"}, elsewhere).status == 1);
  BOOST_TEST((files_under(path() / "a") == files_under(path() / "b")));
}

BOOST_AUTO_TEST_CASE(json_is_all_that_stands_on_standard_output) {
  for (const char* command :
       {"check", "fit", "adhesive", "layout", "schedule", "strength", "order", "job"}) {
    const Outcome run = run_program({command, "joint.toml", "--json"}, here());
    BOOST_TEST_CONTEXT(command) {
      BOOST_TEST(run.err.empty(), run.err);
      const auto result = nlohmann::json::parse(run.out, nullptr, false);
      BOOST_TEST_REQUIRE(!result.is_discarded());
      BOOST_TEST(result["format"] == "sheerlap/1");
      BOOST_TEST(result.contains("perimeter"));
      BOOST_TEST(result.contains("checks"));
      BOOST_TEST(!holds(run.out, "nan"));
    }
  }
  BOOST_TEST(files_under(path()).size() == 2);  // nothing was written
}

BOOST_AUTO_TEST_CASE(json_is_metric_whatever_the_units_for_people) {
  const Outcome metric = run_program({"job", "joint.toml", "--json"}, here());
  const Outcome inches =
      run_program({"--units", "in", "job", "joint.toml", "--json"}, here());
  BOOST_TEST(metric.out == inches.out);
}

BOOST_AUTO_TEST_CASE(a_hole_that_is_not_there_is_refused_with_those_near_it) {
  const Outcome near =
      run_program({"strength", "joint.toml", "--explain=S144"}, here());
  BOOST_TEST(near.status == 2);
  BOOST_TEST(near.err == "--explain S144: there is no such hole: did you mean S14?\n");
  const Outcome far = run_program({"schedule", "joint.toml", "--explain", "X"}, here());
  BOOST_TEST(far.status == 2);
  // pinned: the marks of the demo boat
  BOOST_TEST(far.err ==
             "--explain X: there is no such hole: the marks are S01-S50, P01-P49, "
             "T01-T10\n");
}

BOOST_AUTO_TEST_CASE(a_hole_is_told_alone_and_names_the_line_of_the_joint_file) {
  const Outcome run =
      run_program({"strength", "joint.toml", "--explain", "S14"}, here());
  BOOST_TEST(run.out.starts_with("Demo 640: hole S14\n"));
  BOOST_TEST(holds(run.out, "[yours: joint.toml:"));
  BOOST_TEST(!holds(run.out, "S17"));  // no table of all holes
}

BOOST_AUTO_TEST_CASE(quiet_prints_the_verdict_alone) {
  const Outcome run = run_program({"fit", "joint.toml", "--quiet"}, here());
  BOOST_TEST(lines_in(run.out) == 1);
  BOOST_TEST(holds(run.out, "STOP"));
}

BOOST_AUTO_TEST_CASE(a_date_stands_in_a_report_only_if_the_environment_gives_one) {
  RunOptions dated = here();
  dated.variables = {"SOURCE_DATE_EPOCH=951782400"};
  // derived: 951782400 s = 2000-02-29T00:00:00Z
  BOOST_TEST(holds(run_program({"check", "joint.toml"}, dated).out, "\n2000-02-29\n"));
  BOOST_TEST(!holds(run_program({"check", "joint.toml"}, here()).out, "2000-02-29"));
  dated.variables = {"SOURCE_DATE_EPOCH=today"};
  BOOST_TEST(run_program({"check", "joint.toml"}, dated).status == 2);
}

BOOST_AUTO_TEST_CASE(the_input_may_be_right_where_a_check_of_the_joint_fails) {
  const Outcome run = run_program({"check", "joint.toml"}, here());
  BOOST_TEST(run.status == 0);
  BOOST_TEST(run.err.empty(), run.err);
}

BOOST_AUTO_TEST_CASE(a_wrong_command_line_ends_with_2_and_says_what_is_right) {
  const Outcome run = run_program({"fti", "joint.toml", "--jsn"}, here());
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.out.empty());
  BOOST_TEST(run.err ==
             "unknown command fti: did you mean fit?\n"
             "unknown option --jsn: did you mean --json?\n");
}

BOOST_AUTO_TEST_CASE(wrong_input_ends_with_2_with_file_and_line_and_writes_nothing) {
  put("bad.toml",
      "title = \"Bad\"\nunits = \"mm\"\n[sheer]\nfile = \"sheer.csv\"\n[layout]\n"
      "pitch_mx = 150\n");
  const Outcome run = run_program({"job", "bad.toml", "--out", "out"}, here());
  BOOST_TEST(run.status == 2);
  BOOST_TEST(run.out.empty());
  BOOST_TEST(holds(run.err, "bad.toml:6: "));
  BOOST_TEST(holds(run.err, "pitch_max"));
  BOOST_TEST(lines_in(run.err) > 1);  // all in one run
  BOOST_TEST(!fs::exists(path() / "out"));
}

BOOST_AUTO_TEST_CASE(a_file_that_is_not_there_ends_with_3) {
  const Outcome run = run_program({"check", "none.toml"}, here());
  BOOST_TEST(run.status == 3);
  BOOST_TEST(run.out.empty());
  BOOST_TEST(holds(run.err, "none.toml"));
}

BOOST_AUTO_TEST_CASE(a_full_device_ends_with_3_and_says_so) {
  RunOptions full = here();
  full.out = "/dev/full";
  const Outcome run = run_program({"layout", "joint.toml"}, full);
  BOOST_TEST(run.status == 3);
  BOOST_TEST(holds(run.err, "standard output cannot be written: No space left"));
}

BOOST_AUTO_TEST_CASE(a_reader_that_has_gone_ends_with_3_and_says_so) {
  RunOptions closed = here();
  closed.close_out = true;
  const Outcome run = run_program({"layout", "joint.toml"}, closed);
  BOOST_TEST(run.status == 3);
  BOOST_TEST(holds(run.err, "standard output cannot be written: Broken pipe"));
}

BOOST_AUTO_TEST_CASE(help_and_version_end_with_0) {
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"--help"}, {"job", "--help"}, {"--version"}}) {
    const Outcome run = run_program(arguments, here());
    BOOST_TEST(run.status == 0);
    BOOST_TEST(run.err.empty());
    BOOST_TEST(!run.out.empty());
  }
}

BOOST_AUTO_TEST_CASE(documents_that_cannot_be_written_end_with_3_and_leave_nothing) {
  fs::create_directories(path() / "out" / "order.csv");
  const Outcome run = run_program({"job", "joint.toml", "--out", "out"}, here());
  BOOST_TEST(run.status == 3);
  BOOST_TEST(run.out.empty());
  BOOST_TEST(holds(run.err, "out/order.csv: stands in the way"));
  BOOST_TEST(files_under(path() / "out").empty());
}

BOOST_AUTO_TEST_CASE(a_folder_that_may_not_be_written_ends_with_3) {
  fs::create_directory(path() / "out");
  fs::permissions(path(), fs::perms(0755));
  fs::permissions(path() / "out", fs::perms(0555));
  RunOptions unprivileged = here();
  if (::geteuid() == 0) {
    // root may write anywhere: run as nobody, who may not look into every build folder
    unprivileged.before = {"setpriv", "--reuid=65534", "--clear-groups"};
    unprivileged.program = (path() / "sheerlap").string();
    fs::copy_file(program_path(), unprivileged.program);
  }
  const Outcome run = run_program({"job", "joint.toml", "--out", "out"}, unprivileged);
  BOOST_TEST(run.status == 3);
  BOOST_TEST(holds(run.err, "Permission denied"));
  const Outcome made =
      run_program({"job", "joint.toml", "--out", "out/in"}, unprivileged);
  BOOST_TEST(made.status == 3);
  BOOST_TEST(files_under(path() / "out").empty());
}

BOOST_AUTO_TEST_CASE(a_run_that_is_killed_leaves_no_half_document) {
  BOOST_TEST(run_program({"job", "joint.toml", "--out", "whole"}, here()).status == 1);
  const auto whole = files_under(path() / "whole");
  for (int delay_us = 0; delay_us < 400000; delay_us = delay_us * 5 / 4 + 2000) {
    RunOptions killed = here();
    killed.kill_after_us = delay_us;
    run_program({"job", "joint.toml", "--out", "out"}, killed);
    for (const auto& [name, text] : files_under(path() / "out")) {
      if (name.starts_with(".sheerlap-")) continue;
      BOOST_TEST((whole.contains(name) && whole.at(name) == text), name);
    }
  }
  BOOST_TEST(run_program({"job", "joint.toml", "--out", "out"}, here()).status == 1);
  BOOST_TEST((files_under(path() / "out") == whole));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/job_reasons.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "cli/joint_file.h"
#include "joint/documents/result_json.h"
#include "tests/joint/example_readings.h"
#include "tests/joint/told_numbers.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

using Json = nlohmann::ordered_json;

Job boat(const char* name) {
  auto file = read_joint_file(fixtures_folder() / name / "joint.toml");
  BOOST_TEST_REQUIRE(file.has_value());
  auto job = work_out(std::move(file->joint), Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  return std::move(*job);
}

/// The demo as one boat, with a place that is tight, one that is wide, a step and holes
/// that nothing in stock serves; read by girth, by mark, at one edge, twice at a place.
const Job& read_demo() {
  static const Job job = [] {
    auto file = read_joint_file(fixtures_folder() / "demo-640" / "joint.toml");
    BOOST_TEST_REQUIRE(file.has_value());
    file->joint.reading_limits.step = Length::mm(2);
    Parts parts = boat_parts();
    parts.strength = true;
    const auto starboard = SideName::Starboard;
    return boat_job(
        file->joint, parts,
        {girth_reading(starboard, 900, 3, 4.5), girth_reading(starboard, 1600, 0.5, 2),
         girth_reading(starboard, 2300, 12, 14), mark_reading(starboard, "S30", 3, {}),
         girth_reading(starboard, 5000, 3, 4),
         girth_reading(starboard, 5000.009, 3.2, 4),
         girth_reading(SideName::Port, 3000, {}, 5)});
  }();
  return job;
}

const Job& demo() {
  static const Job job = boat("demo-640");
  return job;
}

/// Numbers that are no answers: what was put in, and where it is told.
const std::map<std::string, std::string> echoes{
    {"fit.stations.*.x", "sheer.file: x"},
    {"fit.stations.*.y", "sheer.file: y"},
    {"fit.stations.*.z", "sheer.file: z"},
    {"fit.stations.*.lap", "lap.depth, or sheer.file: lap"},
    {"order.*.price", "adhesive.pack_price, adhesive.nozzle_price, fastener.box_price"},
    {"order.*.pack_size", "nozzles and nuts by the piece"},
    {"strength.rules.*.asks_mm", "the rule's row: asks, source and notes"},
    {"strength.rules.*.has_mm", "the rule's row: has"},
    {"checks.*.value", "the check's own words; the number stands in its part too"},
    {"checks.*.limit", "the check's own source"},
};

/// The numbers of a result that neither a reason tells of nor an input echoes.
std::set<std::string> untold(const Job& job) {
  Json result = Json::parse(result_json(job));
  result.erase("explain");
  std::vector<std::string> told;
  for (const auto& [echo, address] : echoes) told.push_back(echo);
  return untold_numbers(result, job.reasons, told);
}

void check_all_told(const Job& job) {
  const auto lost = untold(job);
  BOOST_TEST(lost.empty());
  for (const std::string& path : lost) BOOST_TEST_MESSAGE("no reason: " << path);
}

const Explanation& reason_of(const std::string& figure) {
  for (const Explanation& reason : demo().reasons)
    if (reason.figure == figure) return reason;
  BOOST_TEST_REQUIRE(false, "no reason of " << figure);
  return demo().reasons.front();
}

BOOST_AUTO_TEST_SUITE(job_reasons)

// property: a number without a reason is a fault, whichever key it is given
BOOST_AUTO_TEST_CASE(every_number_of_the_result_has_a_reason) {
  check_all_told(demo());
  check_all_told(boat("double-ender"));
  check_all_told(read_demo());
}

BOOST_AUTO_TEST_CASE(a_number_whose_reason_is_taken_away_is_missed) {
  Job job = demo();
  std::erase_if(job.reasons, [](const Explanation& reason) {
    return reason.figure == "fit.gap_mean";
  });
  BOOST_TEST((untold(job) == std::set<std::string>{"fit.gap_mean"}));
}

// property: what is explained is what is printed
BOOST_AUTO_TEST_CASE(each_working_ends_in_the_number_that_the_result_has) {
  for (const Job& job : {demo(), boat("double-ender"), read_demo()}) {
    const Json result = Json::parse(result_json(job));
    const std::size_t compared = compare_told(result, job.reasons);
    BOOST_TEST(compared > 80U);
  }
}

BOOST_AUTO_TEST_CASE(a_pitch_is_the_run_over_its_spaces) {
  const Explanation& reason = reason_of("layout.sides.starboard.runs.0.pitch");
  const Reason& pitch = reason.steps.back();
  BOOST_TEST(pitch.formula == "(s_to - s_from)/n");
  // derived: 545 / 6, as the boat's keep-out and its end leave
  BOOST_TEST(pitch.numbers == "(615 - 70)/6");
  BOOST_TEST(pitch.value == 545. / 6, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(packs_are_worked_from_what_the_user_gave) {
  const Explanation& reason = reason_of("adhesive.boat_volume");
  const Reason* packs = line_of(reason, "n_packs");
  BOOST_TEST_REQUIRE(packs != nullptr);
  BOOST_TEST(packs->formula == "max(1, ceil(V_laid/V_pack))");
  BOOST_TEST(line_of(reason, "w")->origin.address == "adhesive.waste");
  BOOST_TEST(line_of(reason, "V_purge")->origin.address == "adhesive.nozzle_purge");
}

BOOST_AUTO_TEST_CASE(a_gap_says_how_it_was_found_and_from_what) {
  const Explanation& reason = reason_of("fit.gap_min");
  const Reason& gap = reason.steps.back();
  BOOST_TEST(gap.is_found());
  BOOST_TEST(gap.formula.empty());
  BOOST_TEST(gap.found.find("Brent") != std::string::npos);
  BOOST_TEST(gap.accuracy.starts_with("1e-9 mm"));
  BOOST_TEST(line_of(reason, "g_level")->formula ==
             "l_top + (l_low - l_top)*d/lap - (h_top + (h_low - h_top)*d/lap)");
  // derived: the demo's hull face is upright, so that the level gap is the gap
  BOOST_TEST(line_of(reason, "g_level")->value == gap.value,
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(every_line_that_is_worked_or_found_has_source_and_validity) {
  for (const Explanation& reason : demo().reasons) BOOST_TEST_CONTEXT(reason.figure) {
      BOOST_TEST_REQUIRE(!reason.steps.empty());
      for (const Reason& step : reason.steps) {
        BOOST_TEST((!step.what.empty() && !step.unit.empty()));
        if (step.is_given())
          BOOST_TEST((!step.origin.address.empty() || !step.origin.words.empty()));
        else
          BOOST_TEST((!step.source.empty() && !step.validity.empty()));
      }
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

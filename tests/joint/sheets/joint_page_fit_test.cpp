#include "joint/sheets/joint_page_fit.h"

#include <boost/test/unit_test.hpp>

#include "cli/joint_file.h"
#include "joint/documents/wording.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

FitRun run_of(SideName side, double from_mm, double to_mm, FitVerdict verdict) {
  return {side, Length::mm(from_mm), Length::mm(to_mm), verdict, {}};
}

BOOST_AUTO_TEST_SUITE(joint_page_fit_suite)

BOOST_AUTO_TEST_CASE(each_verdict_has_a_letter_of_its_own) {
  BOOST_TEST(verdict_letter(FitVerdict::Good) == 'G');
  BOOST_TEST(verdict_letter(FitVerdict::Tight) == 'T');
  BOOST_TEST(verdict_letter(FitVerdict::Wide) == 'W');
  BOOST_TEST(verdict_letter(FitVerdict::Interference) == 'X');
}

BOOST_AUTO_TEST_CASE(runs_long_enough_to_be_seen_are_drawn_as_they_are) {
  Fit fit;
  fit.runs = {run_of(SideName::Starboard, 0, 100, FitVerdict::Good),
              run_of(SideName::Starboard, 100, 160, FitVerdict::Wide),
              run_of(SideName::Port, 0, 500, FitVerdict::Tight)};
  const auto drawn = drawn_runs(fit, SideName::Starboard, Length::mm(20));
  BOOST_TEST_REQUIRE(drawn.size() == 2U);
  BOOST_TEST(drawn[1].from.in_mm() == 100.0);
  BOOST_TEST(drawn[1].to.in_mm() == 160.0);
  BOOST_TEST((drawn[1].verdict == FitVerdict::Wide));
}

BOOST_AUTO_TEST_CASE(
    a_run_too_short_to_be_seen_gives_its_worse_verdict_to_its_neighbour) {
  Fit fit;
  fit.runs = {run_of(SideName::Starboard, 0, 100, FitVerdict::Good),
              run_of(SideName::Starboard, 100, 101, FitVerdict::Interference),
              run_of(SideName::Starboard, 101, 300, FitVerdict::Good)};
  const auto drawn = drawn_runs(fit, SideName::Starboard, Length::mm(20));
  BOOST_TEST_REQUIRE(drawn.size() == 2U);
  BOOST_TEST((drawn[0].verdict == FitVerdict::Interference));
  BOOST_TEST(drawn[0].to.in_mm() == 101.0);
  BOOST_TEST((drawn[1].verdict == FitVerdict::Good));
}

BOOST_AUTO_TEST_CASE(runs_on_either_side_of_an_opening_are_not_joined) {
  Fit fit;
  fit.runs = {run_of(SideName::Transom, 0, 100, FitVerdict::Good),
              run_of(SideName::Transom, 400, 405, FitVerdict::Good)};
  BOOST_TEST(drawn_runs(fit, SideName::Transom, Length::mm(20)).size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_gap_that_is_the_same_on_both_hands_is_said_of_both) {
  auto file = read_joint_file(fixtures_folder() / "demo-640" / "joint.toml");
  BOOST_TEST_REQUIRE(file.has_value());
  const auto job = work_out(std::move(file->joint), Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  // property: the boat is half a sheer table and its mirror image
  const std::vector<SideName> hands{SideName::Starboard, SideName::Port};
  BOOST_TEST((job->fit->least_reach.sides == hands));
  BOOST_TEST((job->fit->greatest_reach.sides == hands));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

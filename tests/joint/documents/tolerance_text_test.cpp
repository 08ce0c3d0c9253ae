#include "joint/documents/tolerance_text.h"

#include <boost/test/unit_test.hpp>
#include <sstream>

#include "joint/documents/report.h"
#include "joint/documents/text_table.h"
#include "tests/joint/documents/sample_tolerance.h"

namespace sheerlap {
namespace {

std::string text_in(const ToleranceJob& job,
                    LengthUnit unit = LengthUnit::Millimetres) {
  return tolerance_text(job, {unit, Length::mm(1)});
}

bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// A text without its line breaks and runs of blanks.
std::string in_one_line(const std::string& text) {
  std::istringstream words(text);
  std::string all, word;
  while (words >> word) all += (all.empty() ? "" : " ") + word;
  return all;
}

BOOST_AUTO_TEST_SUITE(tolerance_text_of_a_joint)

BOOST_AUTO_TEST_CASE(the_first_line_says_how_many_of_100_boats_go_on) {
  const std::string text = in_one_line(text_in(sample_tolerance()));
  // derived: 0.929 and its ends, 0.9239 and 0.9341, as boats in a hundred
  BOOST_TEST(
      text.starts_with("Of 100 boats 92.9 go on (92.4 to 93.4): every gap "
                       "inside the gap window of 1 to 8 mm, no spreader forced "
                       "beyond its limit."));
}

BOOST_AUTO_TEST_CASE(how_many_were_made_up_and_from_which_seed_is_said) {
  ToleranceJob job = sample_tolerance();
  BOOST_TEST(has(in_one_line(text_in(job)), "10000 boats made up from seed 640 by"));
  BOOST_TEST(!has(text_in(job), "stopped"));
  job.tolerance.boats = 2345;
  const std::string text = in_one_line(text_in(job));
  BOOST_TEST(has(text, "2345 boats made up from seed 640 by"));
  BOOST_TEST(has(text, "It was stopped before all 10000 were done."));
}

BOOST_AUTO_TEST_CASE(shares_are_told_by_what_it_takes) {
  const std::string text = text_in(sample_tolerance());
  BOOST_TEST(has(text, "  with a squeeze at the spreaders    31.8  30.9 to 32.7\n"));
  BOOST_TEST(has(text, "only with a squeeze beyond a limit    5.1  4.7 to 5.5\n"));
  BOOST_TEST(has(text, "not with ten times the limits         2.0  1.7 to 2.3\n"));
}

BOOST_AUTO_TEST_CASE(without_spreaders_there_is_no_word_of_squeezing_beyond) {
  ToleranceJob job = sample_tolerance();
  job.job.joint.seating.spreaders.clear();
  job.tolerance.squeeze_mm = std::nullopt;
  const std::string text = text_in(job);
  BOOST_TEST(!has(text, "beyond a limit"));
  BOOST_TEST(!has(text, "squeeze needed"));
  BOOST_TEST(has(text, "do not, and there is no spreader to squeeze at    2.0"));
}

BOOST_AUTO_TEST_CASE(a_large_sample_is_told_with_one_more_decimal) {
  ToleranceJob job = sample_tolerance();
  job.tolerance.boats = job.tolerance.asked = 100000;
  BOOST_TEST(has(text_in(job), "Of 100 boats 92.90 go on (92.39 to 93.41)"));
}

BOOST_AUTO_TEST_CASE(margins_are_gaps_in_the_readers_unit) {
  const ToleranceJob job = sample_tolerance();
  BOOST_TEST(has(text_in(job), "10 of 100   -0.12  -0.14 to -0.10\n"));
  // derived: 0.93 / 25.4 = 0.0366, 0.912 / 25.4 = 0.0359, 0.948 / 25.4 = 0.0373
  BOOST_TEST(
      has(text_in(job, LengthUnit::Inches), "90 of 100    0.037  0.036 to 0.037"));
}

BOOST_AUTO_TEST_CASE(stretches_that_are_to_blame_are_listed_and_the_rest_counted) {
  const std::string text = in_one_line(text_in(sample_tolerance()));
  BOOST_TEST(has(text, "starboard 0 500 41.0 1.0 20.1 0.8 0.0 0.0 port"));
  BOOST_TEST(has(text, "port 0 488 6.0 0.5 0.0 0.0 10.2 0.6 Of"));
  BOOST_TEST(has(text, "1 stretch where none of the three is 1 of 100 is left out."));
}

BOOST_AUTO_TEST_CASE(the_run_is_bought_at_its_own_percentile) {
  const std::string text = in_one_line(text_in(sample_tolerance()));
  BOOST_TEST(has(text, "for 120 boats"));
  BOOST_TEST(has(text, "to buy: what 90 runs in 100 stay below 228.4 771 1009"));
  BOOST_TEST(has(text, "not this: every boat at its own 90 in 100 240.1 812 1050"));
  BOOST_TEST(has(text, "its 90 in 100 is not the sum of theirs."));
}

BOOST_AUTO_TEST_CASE(without_an_order_there_is_no_run) {
  ToleranceJob job = sample_tolerance();
  job.tolerance.run = std::nullopt;
  for (LengthMix& mix : job.tolerance.lengths) mix.run_p90 = std::nullopt;
  const std::string text = text_in(job);
  BOOST_TEST(has(text, "There is no [order]"));
  BOOST_TEST(!has(text, "to buy:"));
  BOOST_TEST(!has(text, "run, 90 of"));
}

BOOST_AUTO_TEST_CASE(fasteners_are_told_by_length_and_those_not_served_last) {
  const std::string text = text_in(sample_tolerance());
  BOOST_TEST(has(text, "104   100.23  100.02 to 100.44       12104  12092 to 12116\n"));
  BOOST_TEST(has(text, "none serves         0     0.17  0.16 to 0.18\n"));
}

BOOST_AUTO_TEST_CASE(errors_are_ranked_by_what_they_bring_and_small_ones_left_out) {
  const std::string text = text_in(sample_tolerance());
  const auto face = text.find("adhesive  2 hull face");
  BOOST_TEST_REQUIRE(face != std::string::npos);
  BOOST_TEST(text.find("1 lid shrinkage", face) != std::string::npos);
  BOOST_TEST(!has(text, "0.2  -2.8"));  // of the margin the shrinkage brings 0.1
  BOOST_TEST(has(text, "margin    2 hull face"));
}

BOOST_AUTO_TEST_CASE(the_errors_put_in_stand_in_the_files_own_units) {
  const std::string text = text_in(sample_tolerance());
  BOOST_TEST(has(text, "1  lid shrinkage  normal   0.05 %  0.015 %  the boat\n"));
  BOOST_TEST(has(text, "2  hull face      uniform    0 mm   0.4 mm    700 mm\n"));
}

BOOST_AUTO_TEST_CASE(no_line_is_wider_than_a_report_may_be) {
  ToleranceJob wide = sample_tolerance();
  for (BlamedStretch& stretch : wide.tolerance.stretches)
    stretch.to = Length::mm(99999);
  wide.tolerance.boats = wide.tolerance.asked = 1000000;
  for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches}) {
    std::istringstream lines(tolerance_report(wide, {unit}));
    for (std::string line; std::getline(lines, line);)
      BOOST_TEST(width_of(line) <= text_width, line);
  }
}

BOOST_AUTO_TEST_CASE(a_report_has_its_verdict_checks_and_cautions) {
  ToleranceJob job = sample_tolerance();
  const std::string text = tolerance_report(job, {});
  BOOST_TEST(has(text, "how many boats in a hundred will fit\nLOOK FIRST"));
  BOOST_TEST(has(text, "WARN tolerance.packs"));
  BOOST_TEST(has(text, "WARN tolerance.no_length"));
  BOOST_TEST(has(text, "\nCautions\n"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

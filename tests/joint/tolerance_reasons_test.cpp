#include "joint/tolerance_reasons.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/documents/tolerance_json.h"
#include "joint/sample_figures.h"
#include "tests/joint/documents/sample_tolerance.h"
#include "tests/joint/told_numbers.h"

namespace sheerlap {
namespace {

/// Numbers that were put in, or count along a list.
const std::vector<std::string> echoes{
    "tolerance.errors.*.mean",        "tolerance.errors.*.spread",
    "tolerance.errors.*.correlation", "tolerance.run.boats",
    "tolerance.lengths.*.length",     "tolerance.drives.*.*.error"};

/// The sample with a share as it is counted: 9290 of 10000.
ToleranceJob counted_sample() {
  ToleranceJob job = sample_tolerance();
  job.tolerance.shares.on = share_estimate(9290, 10000);
  return job;
}

Json result_of(const ToleranceJob& job) { return {{"tolerance", tolerance_json(job)}}; }

BOOST_AUTO_TEST_SUITE(tolerance_reasons_of_boats)

// property: a number without a reason is a fault, whichever key it is given
BOOST_AUTO_TEST_CASE(every_number_of_made_up_boats_has_a_reason) {
  const ToleranceJob job = counted_sample();
  const auto lost =
      untold_numbers(result_of(job), tolerance_reasons(job.tolerance), echoes);
  BOOST_TEST(lost.empty());
  for (const std::string& path : lost) BOOST_TEST_MESSAGE("no reason: " << path);
}

BOOST_AUTO_TEST_CASE(a_reason_that_is_taken_away_is_missed) {
  const ToleranceJob job = counted_sample();
  Explanations reasons = tolerance_reasons(job.tolerance);
  std::erase_if(reasons, [](const Explanation& reason) {
    return reason.figure == "tolerance.nominal_margin";
  });
  BOOST_TEST((untold_numbers(result_of(job), reasons, echoes) ==
              std::set<std::string>{"tolerance.nominal_margin"}));
}

BOOST_AUTO_TEST_CASE(each_reason_ends_in_the_number_that_the_result_has) {
  const ToleranceJob job = counted_sample();
  // derived: four sets of deciles with their steps, 10 each, and four means, 3 each
  BOOST_TEST(compare_told(result_of(job), tolerance_reasons(job.tolerance)) >= 52U);
}

BOOST_AUTO_TEST_CASE(a_share_is_worked_by_the_score_interval) {
  const ToleranceJob job = counted_sample();
  for (const Explanation& reason : tolerance_reasons(job.tolerance)) {
    if (reason.figure != "tolerance.shares.on.value") continue;
    const Reason* low = line_of(reason, "p_low");
    BOOST_TEST_REQUIRE(low != nullptr);
    BOOST_TEST(low->formula == "p_mid - r");
    // derived: where |p - 0.929| = 1.96 sqrt(p (1 - p) / 10000)
    const double p = low->value;
    BOOST_TEST((0.929 - p) / std::sqrt(p * (1 - p) / 10000) == 1.9599639845400545,
               boost::test_tools::tolerance(1e-9));
    return;
  }
  BOOST_TEST(false, "no reason of the share that goes on");
}

BOOST_AUTO_TEST_CASE(what_is_had_from_a_record_has_its_reasons) {
  ToleranceJob job = counted_sample();
  RecordedFace record;
  record.face = {
      {0.3, 0.1, 0.5}, {1.1, 0.9, 1.2}, {640, 400, 900}, 0.2, false, 30, 540};
  record.reach = {Length::mm(-0.7), Length::mm(1.4)};
  record.boats = 31;
  tell_record(job, record);
  Explanations reasons = tolerance_reasons(job.tolerance);
  BOOST_TEST(!untold_numbers(result_of(job), reasons, echoes).empty());
  reasons.insert(reasons.end(), job.job.reasons.begin(), job.job.reasons.end());
  BOOST_TEST(untold_numbers(result_of(job), reasons, echoes).empty());
  // derived: mean, spread and length with both ends, noise, the pattern's
  // least and greatest, and three counts
  BOOST_TEST(compare_told(result_of(job), job.job.reasons) == 15U);
}

BOOST_AUTO_TEST_CASE(boats_without_run_squeeze_or_spread_have_their_reasons_too) {
  ToleranceJob job = counted_sample();
  job.tolerance.run = std::nullopt;
  job.tolerance.squeeze_mm = std::nullopt;
  job.tolerance.lengths.clear();
  job.tolerance.drives = {};
  const auto reasons = tolerance_reasons(job.tolerance);
  BOOST_TEST(untold_numbers(result_of(job), reasons, echoes).empty());
  BOOST_TEST(compare_told(result_of(job), reasons) > 40U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

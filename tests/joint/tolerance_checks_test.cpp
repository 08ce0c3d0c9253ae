#include "joint/tolerance_checks.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_tolerance.h"

namespace sheerlap {
namespace {

/// The state of a check, which must be there.
CheckState state_of(const ToleranceJob& job,
                    const std::string& id,
                    const WantedShare& wanted = {}) {
  for (const Check& check : tolerance_checks(job.job.joint, job.tolerance, wanted))
    if (check.id == id) return check.state;
  BOOST_TEST_REQUIRE(false, "no check " << id);
  return CheckState::Pass;
}

BOOST_AUTO_TEST_SUITE(tolerance_checks_of_boats)

BOOST_AUTO_TEST_CASE(a_run_that_was_stopped_fails) {
  ToleranceJob job = sample_tolerance();
  BOOST_TEST((state_of(job, "tolerance.boats") == CheckState::Pass));
  job.tolerance.boats = 9999;
  BOOST_TEST((state_of(job, "tolerance.boats") == CheckState::Fail));
}

BOOST_AUTO_TEST_CASE(a_drawn_boat_that_does_not_fit_fails) {
  ToleranceJob job = sample_tolerance();
  job.tolerance.nominal_margin_mm = 0;
  BOOST_TEST((state_of(job, "tolerance.as_drawn") == CheckState::Pass));
  job.tolerance.nominal_margin_mm = -0.001;
  BOOST_TEST((state_of(job, "tolerance.as_drawn") == CheckState::Fail));
}

BOOST_AUTO_TEST_CASE(too_few_that_go_on_fail_a_share_that_was_asked_for) {
  ToleranceJob job = sample_tolerance();
  const std::string id = "tolerance.go_on";
  job.tolerance.shares.on.value = 0.95;
  BOOST_TEST((state_of(job, id) == CheckState::Pass));
  job.tolerance.shares.on.value = 0.949;
  BOOST_TEST((state_of(job, id) == CheckState::Warn));
  BOOST_TEST((state_of(job, id, {95, true}) == CheckState::Fail));
  BOOST_TEST((state_of(job, id, {94.9, true}) == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_correlation_that_the_record_does_not_allow_is_warned_of) {
  FieldEstimate face;
  face.correlation_mm = {700, 500, 900};
  BOOST_TEST((correlation_check(face, Length::mm(500)).state == CheckState::Pass));
  const Check check = correlation_check(face, Length::mm(901));
  BOOST_TEST((check.state == CheckState::Warn));
  BOOST_TEST(check.limit.value() == 900);
}

BOOST_AUTO_TEST_CASE(more_packs_than_the_drawing_orders_are_warned_of) {
  ToleranceJob job = sample_tolerance();
  BOOST_TEST((state_of(job, "tolerance.packs") == CheckState::Warn));
  job.tolerance.run->at_p90.packs = job.tolerance.run->nominal.packs;
  BOOST_TEST((state_of(job, "tolerance.packs") == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(holes_that_no_length_serves_are_warned_of) {
  ToleranceJob job = sample_tolerance();
  BOOST_TEST((state_of(job, "tolerance.no_length") == CheckState::Warn));
  job.tolerance.lengths.back().in_a_boat = {0, 0, 0};
  BOOST_TEST((state_of(job, "tolerance.no_length") == CheckState::Pass));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

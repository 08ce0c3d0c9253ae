#include "joint/going_on.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <string>

#include "joint/job.h"
#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

/// A box whose sides alone are flared at mid-length, under a lip parallel to them.
Joint flared_box(double degrees) {
  const double flare = degrees * std::numbers::pi / 180;
  Joint joint = box_joint(4000, 2000, {});
  auto& rows = joint.sheer.rows;
  rows.insert(rows.begin() + 2, rows[1]);
  rows[2].point = {2000, 1000, 0};
  rows[2].offsets.hull_low = Length::mm(-50 * std::tan(flare));
  rows[2].offsets.lip_top = Length::mm(3 / std::cos(flare));
  rows[2].offsets.lip_low = rows[2].offsets.hull_low + rows[2].offsets.lip_top;
  return joint;
}

Job fit_of(const Joint& joint) {
  Parts parts;
  parts.fit = true;
  auto job = work_out(joint, parts);
  BOOST_REQUIRE_MESSAGE(job.has_value(), job.error().front().message);
  return std::move(*job);
}

/// The check of an id; stops the test if there is none.
Check check_of(const Job& job, const std::string& id) {
  for (const Check& check : job.checks)
    if (check.id == id) return check;
  BOOST_TEST_REQUIRE(false, "no check " << id);
  return {};
}

bool has_check(const Job& job, const std::string& id) {
  for (const Check& check : job.checks)
    if (check.id == id) return true;
  return false;
}

BOOST_AUTO_TEST_SUITE(going_on_suite)

BOOST_AUTO_TEST_CASE(a_lid_that_clashes_straight_down_fails_without_another_way) {
  // derived: 50 tan 5 deg - 3 / cos 5 deg = 1.36 mm are in the way at mid-length
  const Job job = fit_of(flared_box(5));
  BOOST_TEST((check_of(job, "fit.entry").state == CheckState::Fail));
  BOOST_TEST(!has_check(job, "fit.entry_turned"));
  BOOST_TEST(!job.going_on->turned.has_value());
}

BOOST_AUTO_TEST_CASE(with_a_turned_entry_the_straight_clash_only_warns) {
  // derived: a level line off a side meets a lid turned about y at the same face, so
  // the turned lid clashes too, by as much at most
  Joint joint = flared_box(5);
  joint.turned_entry = TurnedEntry{FirstEnd::Bow, Angle::degrees(3)};
  const Job job = fit_of(joint);
  BOOST_TEST((check_of(job, "fit.entry").state == CheckState::Warn));
  const Check turned = check_of(job, "fit.entry_turned");
  BOOST_TEST((turned.state == CheckState::Fail));
  BOOST_TEST(turned.value < 0);
  BOOST_TEST(turned.value == job.going_on->turned->face.worst.in_mm());
  joint = box_joint(4000, 2000, {});
  joint.turned_entry = TurnedEntry{FirstEnd::Bow, Angle::degrees(3)};
  BOOST_TEST((check_of(fit_of(joint), "fit.entry_turned").state == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_clash_that_a_spreader_squeezes_away_warns) {
  // derived: each side is to come in by 1.36 mm at x = 2000
  Joint joint = flared_box(5);
  joint.seating.spreaders = {{Length::mm(1900), Length::mm(1.4)}};
  BOOST_TEST((check_of(fit_of(joint), "fit.entry").state == CheckState::Warn));
  joint.turned_entry = TurnedEntry{FirstEnd::Bow, Angle::degrees(3)};
  const Check turned = check_of(fit_of(joint), "fit.entry_turned");
  BOOST_TEST((turned.state == CheckState::Warn));
  BOOST_TEST(turned.what.find("spreader 1, the nearest, allows 1.4 mm") !=
             std::string::npos);
  joint.seating.spreaders[0].most = Length::mm(1.3);
  BOOST_TEST((check_of(fit_of(joint), "fit.entry_turned").state == CheckState::Fail));
}

BOOST_AUTO_TEST_CASE(a_squeeze_beyond_a_limit_fails_where_no_seating_fits) {
  // derived: the hull stands 9 out at the spreader, which may take away 5, so that the
  // gap is -1 where the window starts at 1; with 7 it is 1
  Joint joint = box_joint(4000, 2000, {});
  joint.seating.readings.push_back(
      {Length::mm(2000), "", Length::mm(2000), Length::mm(2018), std::nullopt});
  joint.seating.spreaders = {{Length::mm(2000), Length::mm(5)}};
  Job job = fit_of(joint);
  Check spreader = check_of(job, "fit.spreader");
  BOOST_TEST((spreader.state == CheckState::Fail));
  BOOST_TEST(spreader.value == 9, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(*spreader.limit == 5);
  BOOST_TEST((check_of(job, "fit.seating").state == CheckState::Fail));

  joint.seating.spreaders[0].most = Length::mm(7.5);
  job = fit_of(joint);
  BOOST_TEST((check_of(job, "fit.spreader").state == CheckState::Warn));
  BOOST_TEST((check_of(job, "fit.seating").state == CheckState::Pass));

  joint.seating.spreaders[0].most = Length::mm(9);
  BOOST_TEST((check_of(fit_of(joint), "fit.spreader").state == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_beam_that_is_not_the_drawn_one_warns) {
  // derived: the box is 2000 over its top edge
  Joint joint = box_joint(4000, 2000, {});
  const auto beam_of = [&](double mould_mm, double free_mm) {
    joint.seating.readings = {{Length::mm(1500), "", Length::mm(mould_mm),
                               Length::mm(free_mm), std::nullopt}};
    return check_of(fit_of(joint), "fit.beam");
  };
  BOOST_TEST((beam_of(2005, 2006).state == CheckState::Pass));
  BOOST_TEST((beam_of(1995, 1996).state == CheckState::Pass));
  BOOST_TEST((beam_of(1994.9, 1996).state == CheckState::Warn));
  const Check far = beam_of(2005.5, 2006);
  BOOST_TEST((far.state == CheckState::Warn));
  BOOST_TEST(far.value == 5.5, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(*far.limit == 5);
}

BOOST_AUTO_TEST_CASE(a_free_beam_far_from_the_moulds_warns) {
  // derived: 3 more than 100 under the mould's beam: the hull has not closed by that
  Joint joint = box_joint(4000, 2000, {});
  joint.seating.readings = {
      {Length::mm(1500), "", Length::mm(2000), Length::mm(1897), std::nullopt}};
  Job job = fit_of(joint);
  const auto warns = [&] {
    return std::count_if(job.checks.begin(), job.checks.end(), [](const Check& check) {
      return check.id == "fit.beam" && check.state == CheckState::Warn;
    });
  };
  BOOST_TEST(warns() == 1);
  joint.seating.readings[0].free = Length::mm(1900);
  job = fit_of(joint);
  BOOST_TEST(warns() == 0);
}

BOOST_AUTO_TEST_CASE(a_held_hull_outside_the_window_warns) {
  // derived: held, each side stands 2.5 out under a lip 3 off: a gap of 0.5, half a mm
  // short of the window
  Joint joint = box_joint(4000, 2000, {});
  joint.seating.readings.push_back(
      {Length::mm(2000), "", Length::mm(2000), Length::mm(2018), Length::mm(2005)});
  joint.seating.spreaders = {{Length::mm(2000), Length::mm(20)}};
  const Check held = check_of(fit_of(joint), "fit.held");
  BOOST_TEST((held.state == CheckState::Warn));
  BOOST_TEST(held.value == -0.5, boost::test_tools::tolerance(1e-6));
  joint.seating.readings[0].held = Length::mm(2003);
  BOOST_TEST((check_of(fit_of(joint), "fit.held").state == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_reading_off_the_boat_stops_the_fit_and_is_named) {
  Joint joint = box_joint(4000, 2000, {});
  joint.seating.spreaders = {{Length::mm(4100), Length::mm(5)}};
  Parts parts;
  parts.fit = true;
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(!job.has_value());
  BOOST_TEST(job.error().front().where == "spreader[0].x");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

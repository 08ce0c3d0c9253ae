#include "joint/fit.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Fit fit_of(const Joint& joint) {
  const auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  const auto fit = sheerlap::fit(joint, *perimeter);
  BOOST_TEST_REQUIRE(fit.has_value());
  return *fit;
}

CheckState state_of(const Fit& fit, const std::string& id) {
  for (const Check& check : fit.checks)
    if (check.id == id) return check.state;
  BOOST_FAIL("no check " + id);
  return CheckState::Fail;
}

BOOST_AUTO_TEST_SUITE(fit_suite)

BOOST_AUTO_TEST_CASE(parallel_faces_have_one_gap_all_round) {
  // derived: hull upright, lip 3 mm outboard of it everywhere, so the gap is 3
  const Fit fit = fit_of(box_joint(4000, 2000, {}));
  BOOST_TEST(fit.least.gap.in_mm() == 3, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.greatest.gap.in_mm() == 3, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.mean.in_mm() == 3, boost::test_tools::tolerance(1e-12));
  BOOST_TEST_REQUIRE(!fit.runs.empty());
  for (const FitRun& run : fit.runs) BOOST_TEST((run.verdict == FitVerdict::Good));
}

BOOST_AUTO_TEST_CASE(of_a_runs_places_that_are_alike_the_first_is_named) {
  // derived: all have 3 mm, so that rounding is all there is to choose by
  for (const FitRun& run : fit_of(box_joint(4000, 2000, {})).runs)
    BOOST_TEST((run.worst.girth == run.from));
}

BOOST_AUTO_TEST_CASE(a_gap_is_square_to_a_flared_hull) {
  // derived: hull leans in by 5 over 50 (slope 0.1), lip parallel to it 3 mm further
  // out, level: square to the hull the gap is 3 cos(atan 0.1) all the way down
  ExampleFaces faces;
  faces.hull_low = -5;
  faces.lip_low = -2;
  const Fit fit = fit_of(box_joint(4000, 2000, faces));
  const double expected = 3 / std::hypot(1, 0.1);
  BOOST_TEST(fit.least.gap.in_mm() == expected, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.greatest.gap.in_mm() == expected, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_lip_with_draft_is_widest_at_its_low_edge) {
  // derived: upright hull, lip from 2 to 4 mm over the lap: least 2 at the top,
  // greatest 4 at the low edge, mean 3
  ExampleFaces faces;
  faces.lip_top = 2;
  faces.lip_low = 4;
  const Fit fit = fit_of(box_joint(4000, 2000, faces));
  BOOST_TEST(fit.least.gap.in_mm() == 2, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.least.depth.in_mm() == 0);
  BOOST_TEST(fit.greatest.gap.in_mm() == 4, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.greatest.depth.in_mm() == 50);
  BOOST_TEST(fit.mean.in_mm() == 3, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_run_starts_where_the_gap_leaves_the_window) {
  // derived: on a straight side the top offset falls from 3 to 0 over 2000 mm, so the
  // gap at the top, 3 (1 - s / 2000) across a hull that is upright, is under 1 from
  // s = 4000 / 3 on; the lip's slope along the side does not matter, since the gap is
  // taken along the hull's normal
  Joint joint = box_joint(4000, 2000, {});
  joint.sheer.rows.insert(joint.sheer.rows.begin() + 2, joint.sheer.rows[1]);
  joint.sheer.rows[2].point = {2000, 1000, 0};
  joint.sheer.rows[2].offsets.lip_top = Length::mm(0);
  const Fit fit = fit_of(joint);
  std::vector<FitRun> starboard;
  for (const FitRun& run : fit.runs)
    if (run.side == SideName::Starboard) starboard.push_back(run);
  // the side has the half bow (1000 mm) before the straight stretch
  BOOST_TEST_REQUIRE(starboard.size() == 3u);
  BOOST_TEST((starboard[1].verdict == FitVerdict::Tight));
  BOOST_TEST(starboard[1].from.in_mm() == 1000 + 4000. / 3,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(starboard[1].to.in_mm() == 3000 + 2000. / 3,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(starboard[1].worst.gap.in_mm() == 0, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(starboard[1].worst.girth.in_mm() == 3000,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST((state_of(fit, "fit.gap_min") == CheckState::Fail));
  BOOST_TEST((state_of(fit, "fit.interference") == CheckState::Pass));
}

BOOST_AUTO_TEST_CASE(a_lip_inside_the_hull_interferes) {
  ExampleFaces faces;
  faces.lip_top = -0.5;
  const Fit fit = fit_of(box_joint(4000, 2000, faces));
  BOOST_TEST(fit.least.gap.in_mm() == -0.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST((fit.runs.front().verdict == FitVerdict::Interference));
  BOOST_TEST((state_of(fit, "fit.interference") == CheckState::Fail));
}

BOOST_AUTO_TEST_CASE(a_gap_at_its_limit_is_good) {
  ExampleFaces faces;
  faces.lip_top = 1;
  faces.lip_low = 8;
  const Fit fit = fit_of(circle_joint(1000, 41, faces));
  BOOST_TEST_REQUIRE(!fit.runs.empty());
  for (const FitRun& run : fit.runs) BOOST_TEST((run.verdict == FitVerdict::Good));
}

BOOST_AUTO_TEST_CASE(a_cone_about_a_cone_has_the_gap_of_two_circles) {
  // derived: with the hull upright the normal is level and radial, so the gap is the
  // difference of the radii, at each depth
  ExampleFaces faces;
  faces.lip_top = 3;
  faces.lip_low = 5;
  const Fit fit = fit_of(circle_joint(1000, 81, faces));
  // a spline through 81 points of the half circle is round to 1e-6
  BOOST_TEST(fit.least.gap.in_mm() == 3, boost::test_tools::tolerance(1e-7));
  BOOST_TEST(fit.greatest.gap.in_mm() == 5, boost::test_tools::tolerance(1e-7));
}

BOOST_AUTO_TEST_CASE(the_mean_weighs_by_area_of_the_hull_face) {
  // derived: on the long sides the gap runs linearly from 3 at the bow corner to 5 at
  // the stern corner, on the bow it is 3 and on the transom 5:
  // (2 x 4000 x 4 + 2000 x 3 + 2000 x 5) / 12000 = 4
  Joint joint = box_joint(4000, 2000, {});
  for (const std::size_t row : {2u, 3u}) {
    joint.sheer.rows[row].offsets.lip_top = Length::mm(5);
    joint.sheer.rows[row].offsets.lip_low = Length::mm(5);
  }
  BOOST_TEST(fit_of(joint).mean.in_mm() == 4, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_least_gap_may_lie_between_the_rows) {
  // derived: the hull's top is offset by 0, 2 and 0 at three rows 2000 mm apart, its
  // low edge by 0, under a lip upright at 3. At the middle row the hull leans by 2 in
  // 50 down the lap and by 2 in 2000 along it, so its unit normal has the outboard part
  // 1 / sqrt(1 + 0.04^2 + 0.001^2), and the gap is 1 mm over that
  Joint joint = box_joint(4000, 2000, {});
  joint.sheer.rows.insert(joint.sheer.rows.begin() + 2, joint.sheer.rows[1]);
  joint.sheer.rows[2].point = {2000, 1000, 0};
  joint.sheer.rows[2].offsets.hull_top = Length::mm(2);
  const Fit fit = fit_of(joint);
  BOOST_TEST(fit.least.gap.in_mm() == std::sqrt(1 + 0.04 * 0.04 + 0.001 * 0.001),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(fit.least.girth.in_mm() == 3000, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(an_opening_has_no_gap) {
  Joint joint = box_joint(4000, 2000, {});
  // the only interference lies at the middle of the transom, which is cut out
  joint.sheer.rows.back().offsets.lip_top = Length::mm(-4);
  Opening opening;
  opening.what = "outboard well";
  opening.stretch = {SideChoice::Transom, Length::mm(100), Length::mm(1900), false};
  joint.openings.push_back(opening);
  const Fit fit = fit_of(joint);
  BOOST_TEST(fit.least.gap.in_mm() > 2);
  for (const FitStation& station : fit.stations)
    BOOST_TEST(!(station.side == SideName::Transom && station.girth.in_mm() > 101 &&
                 station.girth.in_mm() < 1899));
}

BOOST_AUTO_TEST_CASE(a_lip_parallel_to_a_flared_hull_clashes_on_its_way_down) {
  // derived: with flare f, a lip parallel to the hull at the gap 3 square to it over a
  // lap of 50 clears the hull's top edge by 3 / cos f - 50 tan f; the figures to 0.1 mm
  // are common practice, no source
  const struct {
    double degrees, clearance_mm;
  } rows[] = {{0, 3.0}, {2, 1.3}, {5, -1.4}, {10, -5.8}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.degrees) {
      const double flare = row.degrees * std::numbers::pi / 180;
      ExampleFaces faces;
      faces.hull_low = -50 * std::tan(flare);
      faces.lip_top = 3 / std::cos(flare);
      faces.lip_low = faces.hull_low + faces.lip_top;
      const Fit fit = fit_of(box_joint(4000, 2000, faces));
      BOOST_TEST(fit.entry.worst.in_mm() == faces.lip_low,
                 boost::test_tools::tolerance(1e-12));
      BOOST_TEST(std::abs(fit.entry.worst.in_mm() - row.clearance_mm) < 0.05);
      BOOST_TEST(fit.entry.height.in_mm() == 50);
      BOOST_TEST((state_of(fit, "fit.entry") == CheckState::Fail) == (row.degrees > 2));
    }
}

BOOST_AUTO_TEST_CASE(stations_are_the_rows_on_each_side) {
  const Fit fit = fit_of(box_joint(4000, 2000, {}));
  std::size_t starboard = 0, port = 0, transom = 0;
  for (const FitStation& station : fit.stations) {
    starboard += station.side == SideName::Starboard;
    port += station.side == SideName::Port;
    transom += station.side == SideName::Transom;
  }
  // rows 1 to 3 on each side; the transom corners and its middle on the transom
  BOOST_TEST(starboard == 3u);
  BOOST_TEST(port == 3u);
  BOOST_TEST(transom == 3u);
  BOOST_TEST(fit.stations[1].girth.in_mm() == 1000);
  BOOST_TEST(fit.stations[1].gaps.size() == 3u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/boat_job.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "cli/joint_file.h"
#include "joint/documents/report.h"
#include "joint/gap_profile.h"
#include "joint/sheer_places.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_readings.h"
#include "tests/joint/strong_joint.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Joint demo() {
  auto file = read_joint_file(fixtures_folder() / "demo-640" / "joint.toml");
  BOOST_TEST_REQUIRE(file.has_value());
  return std::move(file->joint);
}

Job drawn_job(const Joint& joint, const Parts& parts) {
  auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  return std::move(*job);
}

/// The drawn gaps of a job at places of each side, as if they had been read.
std::vector<GivenReading> drawn_readings(const Job& drawn) {
  std::vector<GivenReading> readings;
  for (const PerimeterSide& side : drawn.perimeter.sides) {
    const GapProfile profile(drawn.perimeter, side);
    for (const double share : {0.05, 0.31, 0.7, 0.97}) {
      const Length girth = share * side.drill_line_length;
      const Place place = place_on_sheer(side, girth);
      const double lap = drawn.perimeter.hull->lap_mm(place);
      readings.push_back(girth_reading(side.name, girth.in_mm(),
                                       profile.gap_mm(place, 0),
                                       profile.gap_mm(place, lap)));
    }
  }
  return readings;
}

/// The boat's report as that of a joint drawn so.
std::string report_as_drawn(Subject subject, Job job) {
  job.boat.reset();
  std::erase_if(job.checks,
                [](const Check& check) { return check.id.starts_with("boat."); });
  return report(subject, job, {});
}

Errors errors_of(const Joint& joint,
                 const std::vector<GivenReading>& readings,
                 std::optional<ReadingState> state = std::nullopt) {
  const auto job = work_out_boat(joint, boat_parts(), {"hull.csv", readings, state});
  BOOST_TEST_REQUIRE(!job.has_value());
  return job.error();
}

BOOST_AUTO_TEST_SUITE(boat_job_suite)

BOOST_AUTO_TEST_CASE(readings_as_drawn_change_nothing_to_the_last_digit) {
  Joint joint = demo();
  joint.seating.readings.clear();  // beams of the hull, which a boat's readings replace
  const Job drawn = drawn_job(joint, boat_parts());
  const Job boat = boat_job(joint, boat_parts(), drawn_readings(drawn));
  for (const Subject subject : {Subject::Fit, Subject::Adhesive, Subject::Schedule})
    BOOST_TEST(report_as_drawn(subject, boat) == report(subject, drawn, {}));
  BOOST_TEST(boat.boat->beads.empty());
  for (const PlaceGap& place : boat.boat->places)
    if (place.fastener) BOOST_TEST((place.fastener->length == place.fastener->drawn));
}

BOOST_AUTO_TEST_CASE(a_gap_1_mm_wider_all_round_takes_the_area_times_1_mm_more) {
  // derived: a circle of radius R, lap D, the hull 1 mm inside: pi D (R^2 - (R - 1)^2)
  // = 2 pi R D - pi D, and 2 pi R D is the area of the hull face
  constexpr double radius = 2000;
  constexpr double lap = 50;
  const Joint joint = circle_joint(radius, 96, {});
  Parts parts;
  parts.adhesive = true;
  const Job drawn = drawn_job(joint, parts);
  const Job boat = boat_job(joint, parts,
                            {girth_reading(SideName::Starboard, 1000, 4, 4),
                             girth_reading(SideName::Port, 2500, 4, 4)});
  const double more =
      boat.adhesive->nominal.joint.in_ml() - drawn.adhesive->nominal.joint.in_ml();
  const double second_order = std::numbers::pi * lap / 1000;
  const double area_ml = drawn.adhesive->bond_area_mm2 / 1000;
  // the spline through the points strays from the circle by some 1e-7 of it
  BOOST_TEST(more == area_ml - second_order, tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(a_wedge_read_is_the_gap_and_the_stack_of_the_hole_there) {
  // derived: a box with upright faces: from 2 at the top to 6 at a lap of 50 the hull
  // leans by 4 in 50; at a drill line 25 down the gap is 4, less or more by the lean's
  // square, 0.32 %; the stack lip, gap and hull
  const Joint joint = box_joint(4000, 2000, {});
  const Job drawn = drawn_job(joint, boat_parts());
  const DrillStation& hole = drawn.schedule->stations[12];
  const Job boat =
      boat_job(joint, boat_parts(), {mark_reading(hole.side, hole.mark, 2, 6)});
  const DrillStation& there = boat.schedule->stations[12];
  BOOST_TEST(there.mark == hole.mark);
  BOOST_TEST((there.girth == hole.girth));
  BOOST_TEST(there.gap.in_mm() == 4., tolerance(0.004));
  BOOST_TEST(there.stack.in_mm() == 5 + 4 + 6., tolerance(0.004));
  const auto place =
      std::find_if(boat.boat->places.begin(), boat.boat->places.end(),
                   [&](const auto& at) { return at.place == hole.mark; });
  BOOST_TEST_REQUIRE((place != boat.boat->places.end()));
  BOOST_TEST(place->top.gap.in_mm() == 2., tolerance(1e-6));
  BOOST_TEST(place->low.gap.in_mm() == 6., tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_holes_stay_where_they_are_drawn_also_if_strength_sets_them) {
  Joint joint = strong_joint();
  joint.layout.by_strength = true;
  joint.layout.pitch_max = unlimited_pitch;
  Parts parts;
  parts.schedule = true;
  const Job drawn = drawn_job(joint, parts);
  const Job boat =
      boat_job(joint, parts, {girth_reading(SideName::Starboard, 1500, 7, 7)});
  BOOST_TEST_REQUIRE(boat.schedule->stations.size() == drawn.schedule->stations.size());
  for (std::size_t i = 0; i < boat.schedule->stations.size(); ++i) {
    const DrillStation& here = boat.schedule->stations[i];
    const DrillStation& was = drawn.schedule->stations[i];
    BOOST_TEST((here.girth == was.girth));
    BOOST_TEST((here.point - was.point).norm() < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(the_latest_state_counts_unless_another_is_asked_for) {
  const Joint joint = box_joint(4000, 2000, {});
  GivenReading held = girth_reading(SideName::Starboard, 1500, 5, 5);
  held.state = ReadingState::Held;
  const std::vector<GivenReading> both{girth_reading(SideName::Starboard, 1500, 2, 2),
                                       held};
  const Job latest = boat_job(joint, boat_parts(), both);
  BOOST_TEST((latest.boat->state == ReadingState::Held));
  BOOST_TEST(latest.fit->greatest.gap.in_mm() == 5., tolerance(1e-6));
  const auto dry = work_out_boat(joint, boat_parts(), {"", both, ReadingState::Dry});
  BOOST_TEST_REQUIRE(dry.has_value());
  BOOST_TEST(dry->fit->least.gap.in_mm() == 2., tolerance(1e-6));
  const Errors none = errors_of(joint, both, ReadingState::After);
  BOOST_TEST(none.front().where == "readings");
  BOOST_TEST(none.front().message ==
             "no reading has the state after: there is dry, held");
}

BOOST_AUTO_TEST_CASE(a_reading_at_no_place_of_the_joint_is_told_by_its_row) {
  const Joint joint = box_joint(4000, 2000, {});
  const Errors errors =
      errors_of(joint, {girth_reading(SideName::Starboard, 1500, 2, 2),
                        mark_reading(SideName::Starboard, "S99", 2, 2)});
  BOOST_TEST_REQUIRE(errors.size() == 1U);
  BOOST_TEST(errors.front().where == "reading[1]");
}

BOOST_AUTO_TEST_CASE(what_was_not_read_is_told_by_checks_that_warn) {
  const Job boat = boat_job(box_joint(4000, 2000, {}), boat_parts(),
                            {girth_reading(SideName::Starboard, 1500, 3, {})});
  std::vector<std::string> warned;
  for (const Check& check : boat.checks)
    if (check.id.starts_with("boat.") && check.state == CheckState::Warn)
      warned.push_back(check.id);
  BOOST_TEST((warned ==
              std::vector<std::string>{"boat.held", "boat.unread", "boat.one_edge"}));
}

BOOST_AUTO_TEST_CASE(without_an_adhesive_the_limits_are_needed) {
  Joint joint = box_joint(4000, 2000, {});
  joint.adhesive.reset();
  Parts parts;
  parts.schedule = true;
  const BoatReadings readings{"", {girth_reading(SideName::Port, 900, 2, 2)}, {}};
  const auto refused = work_out_boat(joint, parts, readings);
  BOOST_TEST_REQUIRE(!refused.has_value());
  BOOST_TEST(refused.error().front().where == "adhesive");
  joint.reading_limits.gap_min = Length::mm(1);
  joint.reading_limits.gap_max = Length::mm(6);
  BOOST_TEST(work_out_boat(joint, parts, readings).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

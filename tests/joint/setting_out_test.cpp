#include "joint/setting_out.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(setting_out_suite)

BOOST_AUTO_TEST_CASE(dividers_gain_on_an_arc_as_the_handbook_has_it) {
  // the handbook of this project, "hole-to-hole misalignment", worked out there; to
  // half of its last digit
  const struct {
    double radius, gain, digit;
  } rows[] = {{5000, 0.01, 0.01},
              {1000, 0.14, 0.01},
              {500, 0.57, 0.01},
              {320, 1.4, 0.1},
              {120, 12, 1}};
  for (const auto& row : rows)
    BOOST_TEST(std::abs(stepping_gain(Length::mm(150), Length::mm(row.radius)).in_mm() -
                        row.gain) <= row.digit / 2);
}

BOOST_AUTO_TEST_CASE(a_leaning_drill_shifts_its_exit_as_the_handbook_has_it) {
  // the same table: 14 mm, 5 and 10 degrees
  BOOST_TEST(std::abs(exit_shift(Length::mm(14), Angle::degrees(5)).in_mm() - 1.2) <
             0.05);
  BOOST_TEST(std::abs(exit_shift(Length::mm(14), Angle::degrees(10)).in_mm() - 2.5) <
             0.05);
}

BOOST_AUTO_TEST_CASE(dividers_step_round_a_circle_by_its_chords) {
  // derived: chords of 150 on the drill line of radius 808: 2 asin(150 / 1616) each
  const Perimeter perimeter = perimeter_of(circle_joint(800, 120, {}));
  const SideLine& line = perimeter.side(SideName::Starboard)->drill_line;
  const double step = 2 * 808 * std::asin(150. / 1616);
  for (const std::size_t steps : {0u, 1u, 7u, 15u})
    // the spline through 120 points is within 1e-5 of the circle
    BOOST_TEST(
        std::abs(stepped_off(line, Length::mm(40), Length::mm(150), steps).in_mm() -
                 (40 + static_cast<double>(steps) * step)) < 1e-4);
}

BOOST_AUTO_TEST_CASE(dividers_step_along_a_straight_side_without_gain) {
  const Perimeter perimeter = perimeter_of(box_joint(2000, 1000, {}));
  const SideLine& line = perimeter.side(SideName::Starboard)->drill_line;
  BOOST_TEST(stepped_off(line, Length::mm(600), Length::mm(150), 8).in_mm() == 1800,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(dividers_that_run_off_a_side_stop_at_its_end) {
  const Perimeter perimeter = perimeter_of(box_joint(2000, 1000, {}));
  const SideLine& line = perimeter.side(SideName::Starboard)->drill_line;
  BOOST_TEST(
      (stepped_off(line, Length::mm(600), Length::mm(150), 100) == line.length()));
}

/// A layout of one run on starboard.
Layout one_run(Length from, Length pitch, std::size_t spaces) {
  Layout layout;
  LayoutSide side;
  side.runs = {{from, from + static_cast<double>(spaces) * pitch, spaces, pitch}};
  layout.sides = {side};
  return layout;
}

SteppedRun run_of(Length pitch, std::size_t spaces, Length round_to) {
  Joint joint = box_joint(8000, 1000, {});
  joint.layout.round_to = round_to;
  const auto spec = fastener(joint.fastener);
  BOOST_TEST_REQUIRE(spec.has_value());
  const SettingOut errors = setting_out(
      joint, perimeter_of(joint), one_run(Length::mm(550), pitch, spaces), {}, *spec);
  BOOST_TEST_REQUIRE(errors.runs.size() == 1u);
  return errors.runs[0];
}

BOOST_AUTO_TEST_CASE(rounded_pitches_pile_up_as_the_handbook_has_it) {
  // the same table: 144.32 to 144 mm, 44 times: -14 mm; to the nearest 1/16 in: +6 mm
  const Length pitch = Length::mm(144.32);
  BOOST_TEST(std::abs(run_of(pitch, 44, Length::mm(1)).rounded.in_mm() + 14) < 0.5);
  BOOST_TEST(std::abs(run_of(pitch, 44, Length::inches(1. / 16)).rounded.in_mm() - 6) <
             0.5);
}

BOOST_AUTO_TEST_CASE(running_dimensions_are_off_by_half_their_step) {
  Joint joint = box_joint(2000, 1000, {});
  joint.layout.round_to = Length::inches(1. / 16);
  const auto spec = fastener(joint.fastener);
  const SettingOut errors = setting_out(joint, perimeter_of(joint), {}, {}, *spec);
  BOOST_TEST(errors.running.in_inches() == 1. / 32, tolerance(1e-12));
  BOOST_TEST(errors.thickest == "");
}

BOOST_AUTO_TEST_CASE(the_thickest_stack_is_where_a_leaning_bit_shifts_most) {
  const Joint joint = box_joint(2000, 1000, {});
  std::vector<DrillStation> stations(3);
  stations[0].mark = "S01";
  stations[1].mark = "S02";
  stations[2].mark = "S03";
  stations[0].stack = stations[2].stack = Length::mm(14);
  stations[1].stack = Length::mm(20);
  const auto spec = fastener(joint.fastener);
  const SettingOut errors =
      setting_out(joint, perimeter_of(joint), {}, stations, *spec);
  BOOST_TEST(errors.thickest == "S02");
  BOOST_TEST(errors.leaning_exit.in_mm() == 20 * std::tan(std::numbers::pi / 60),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(holes_drilled_apart_take_up_all_that_parts_them) {
  // derived: along 1.5 + 1.5 + 0.5 + 0.5, across 1 + 1 + 2 + 2, leaning 5 and 8 tan 3
  Joint joint = box_joint(2000, 1000, {});
  joint.layout.round_to = Length::mm(1);
  joint.lip = {Length::mm(5), Length::mm(2)};
  joint.hull = {Length::mm(6), Length::mm(2)};
  FastenerSpec spec;
  spec.diameter = Length::mm(4.8);
  const double lean = std::tan(std::numbers::pi / 60);
  const double worst = std::sqrt(16. + 36) + 13 * lean;
  const double root_sum =
      std::sqrt(2 * 2.25 + 2 * 0.25 + 2 * 1 + 2 * 4 + (25 + 64) * lean * lean);
  const ApartHoles loose = apart_holes(joint, spec, Length::mm(3));
  BOOST_TEST(loose.off_worst.in_mm() == worst, tolerance(1e-12));
  BOOST_TEST(loose.off_root_sum.in_mm() == root_sum, tolerance(1e-12));
  BOOST_TEST(loose.hole_worst.in_mm() == 4.8 + worst, tolerance(1e-12));
  spec.hull_pilot = Length::mm(3.9);
  const ApartHoles fixed = apart_holes(joint, spec, Length::mm(3));
  BOOST_TEST(fixed.hole_worst.in_mm() == 4.8 + 2 * worst, tolerance(1e-12));
  BOOST_TEST(fixed.hole_root_sum.in_mm() == 4.8 + 2 * root_sum, tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

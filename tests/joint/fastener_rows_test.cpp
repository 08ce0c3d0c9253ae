#include "joint/fastener_rows.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/job.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"
#include "tests/joint/example_strength.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box 4000 by 2000: half bow 1008, sides 4016, transom 2016 on the drill line.
Joint example(const JointLoad& load) {
  return with_strength(box_joint(4000, 2000, {}), load);
}

std::vector<FastenerRow> rows_of(const Joint& joint, const Layout& layout) {
  const Perimeter perimeter = perimeter_of(joint);
  const auto made = schedule(joint, perimeter, layout);
  BOOST_TEST_REQUIRE(made.has_value(), (made ? "" : made.error().front().message));
  const auto loads = JointLoads::of(joint, perimeter);
  BOOST_TEST_REQUIRE(loads.has_value());
  const auto strengths = fastener_strengths(joint, perimeter, *made, *loads);
  BOOST_TEST_REQUIRE(strengths.has_value());
  return strengths->rows;
}

BOOST_AUTO_TEST_SUITE(fastener_rows)

BOOST_AUTO_TEST_CASE(a_hole_carries_half_of_its_spaces_and_all_of_the_way_to_a_corner) {
  // derived: starboard's inner corner at 1008, its end at 5024
  const auto rows =
      rows_of(example({2, 0, 0}),
              layout_at({{SideName::Starboard, {100, 900, 1100, 2000, 2200, 4900}}}));
  const double lengths[] = {100 + 400, 400 + 108,  92 + 450,
                            450 + 100, 100 + 1350, 1350 + 124};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    BOOST_TEST(rows[i].tributary.in_mm() == lengths[i], tolerance(1e-9));
    BOOST_TEST(rows[i].load == 2 * lengths[i], tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_load_between_two_holes_is_carried_by_them) {
  Joint joint = example({0, 0, 0});
  joint.loads->stretches.push_back(
      {{SideChoice::Starboard, Length::mm(2040), Length::mm(2140), false},
       {10, 0, 0},
       "shroud"});
  const auto rows =
      rows_of(joint, layout_at({{SideName::Starboard, {1100, 2000, 2200, 4900}}}));
  BOOST_TEST(rows[0].load == 0);
  BOOST_TEST(rows[1].load == 600, tolerance(1e-9));  // derived: 60 mm of it nearer
  BOOST_TEST(rows[2].load == 400, tolerance(1e-9));
  BOOST_TEST(rows[3].load == 0);
}

BOOST_AUTO_TEST_CASE(the_holes_of_a_side_carry_all_of_its_load) {
  // property: no load is lost or counted twice, also with an opening
  Joint joint = example({3, 0, 1});
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(3000), Length::mm(3400), false}, "door"});
  joint.loads->points.push_back({SideChoice::Starboard, Length::mm(2111), false, 777,
                                 LoadDirection::Along, Length::mm(33), "eye"});
  const auto rows = rows_of(
      joint, layout_at({{SideName::Starboard, {100, 900, 1100, 2900, 3500, 4900}}}));
  double shear = 0, pull = 0;
  for (const FastenerRow& row : rows) {
    shear += row.load;
    pull += row.pull;
  }
  BOOST_TEST(shear == 3 * (5024 - 400) + 777, tolerance(1e-9));
  BOOST_TEST(pull == 5024 - 400, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_hole_on_the_centreline_carries_both_halves) {
  // derived: 200 mm to the first hole of either side, half of it each
  const Joint joint = with_strength(circle_joint(1500, 61, {}), {2, 0, 0});
  const auto rows = rows_of(joint, layout_at({{SideName::Starboard, {0, 200, 600}},
                                              {SideName::Port, {200, 600}}}));
  BOOST_TEST(rows[0].tributary.in_mm() == 200, tolerance(1e-9));
  BOOST_TEST(rows[0].load == 400, tolerance(1e-9));
  for (const std::size_t hole : {1u, 3u}) {
    BOOST_TEST(rows[hole].tributary.in_mm() == 300, tolerance(1e-9));
    BOOST_TEST(rows[hole].load == 600, tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_hole_on_a_corner_carries_its_part_of_both_sides) {
  // derived: the corner within starboard is at 1008
  const auto rows = rows_of(example({2, 0, 0}),
                            layout_at({{SideName::Starboard, {508, 1008, 1208}}}));
  BOOST_TEST(rows[1].tributary.in_mm() == 250 + 100, tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_whole_joint_has_the_capacities_worked_elsewhere) {
  // derived: M1 in an independent script; dry, so that nothing is taken off
  Joint joint = example({1, 0, 0});
  joint.fastener.kind = FastenerKind::Bolt;
  joint.fastener.size = "M6";
  joint.fastener.lengths = {Length::mm(25), Length::mm(30), Length::mm(35)};
  joint.fastener.lip_hole = Length::mm(6.5);
  joint.fastener.hull_pilot.reset();
  joint.fastener.line = Length::mm(30);
  joint.strength.wet = 1;
  for (Laminate* laminate : {&joint.hull, &joint.lip}) {
    laminate->strength.tension = 53.6;
    laminate->strength.shear = 46.4;
    laminate->strength.bearing = 87.6;
    laminate->strength.interlaminar = 14.5;
  }
  const FastenerRow row =
      rows_of(joint, layout_at({{SideName::Starboard, {2000, 2200, 2400}}}))[1];
  BOOST_TEST(row.bearing.value() == 2628, tolerance(1e-9));
  // derived: 2 (18 - 3.25) 5 x 46.4, the lip's low edge 20 mm off less 2 mm of trim
  BOOST_TEST(row.shear_out.value() == 6844, tolerance(1e-6));
  BOOST_TEST(row.shank.value() == 8451.80, tolerance(1e-6));
  BOOST_TEST(row.shank_pull.value() == 14086.3, tolerance(1e-5));
  BOOST_TEST((row.governing == FastenerMode::Bearing));
  BOOST_TEST(row.utilisation == 200 / 2628., tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_hole_with_less_edge_than_its_radius_carries_nothing) {
  Joint joint = example({1, 0, 0});
  joint.fastener.line = Length::mm(46);  // 4 - 2 = 2 mm of edge, a hole of 5.3
  const FastenerRow row =
      rows_of(joint, layout_at({{SideName::Starboard, {2000, 2200, 2400}}}))[1];
  BOOST_TEST(row.shear_out.value() == 0);
  BOOST_TEST(std::isinf(row.utilisation));
}

BOOST_AUTO_TEST_CASE(the_carried_pitch_is_what_is_just_carried) {
  // property: use of 1 at that space, also where the strip that tears is narrower than
  // six shanks
  for (const double along : {5., 40., 70., 76.}) {
    BOOST_TEST_CONTEXT(along) {
      const Joint joint = example({along, 0, 0.2 * along});
      const auto spec = fastener(joint.fastener);
      DrillStation station;
      station.edge_low = station.edge_top = Length::mm(20);
      const JointLoad load{along, 0, 0.02 * along};
      const auto pitch = carried_pitch(joint, *spec, station, load);
      BOOST_TEST_REQUIRE(pitch.has_value());
      BOOST_TEST_REQUIRE(pitch->in_mm() > 0);
      BOOST_TEST(
          fastener_row(joint, *spec, station, {*pitch, *pitch, load}).utilisation == 1,
          tolerance(1e-9));
    }
  }
  const Joint joint = example({1, 0, 0});
  const auto spec = fastener(joint.fastener);
  BOOST_TEST(!carried_pitch(joint, *spec, DrillStation{}, {}).has_value());
  BOOST_TEST(carried_pitch(joint, *spec, DrillStation{}, {1, 0, 0})->in_mm() == 0);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

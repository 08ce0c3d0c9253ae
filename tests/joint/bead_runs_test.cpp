#include "joint/bead_runs.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box whose gap grows from 3 to 9 along each side.
Joint widening_box() {
  Joint joint = box_joint(2000, 1000, {});
  for (const std::size_t row : {2u, 3u}) {
    joint.sheer.rows[row].offsets.lip_top = Length::mm(9);
    joint.sheer.rows[row].offsets.lip_low = Length::mm(9);
  }
  return joint;
}

/// The runs of a side with a bond band `band_mm` wide.
std::vector<BeadRun> runs_of(const Joint& joint, SideName side, double band_mm) {
  const Perimeter perimeter = perimeter_of(joint);
  const EnclosedSpace space(*perimeter.hull, *perimeter.lip, {0, band_mm});
  return bead_runs(*perimeter.side(side), space, *joint.adhesive);
}

BOOST_AUTO_TEST_SUITE(bead_runs_suite)

BOOST_AUTO_TEST_CASE(a_run_ends_where_the_section_passes_a_bead) {
  // derived: a band of 20 needs 22 gap (squeeze-out 10 %); a triangle of 12 covers 72,
  // so to gap 72 / 22; along the side the gap grows by 6 in 2000 after the bow's 500
  const auto along = [](double size) {
    return 500 + 2000 * (size * size / 2 / 22 - 3) / 6;
  };
  const struct {
    double from, to, size, needed;
  } rows[] = {{0, along(12), 12, 72},
              {along(12), along(14), 14, 98},
              {along(14), along(16), 16, 128},
              {along(16), along(18), 18, 162},
              {along(18), 2500, 20, 9 * 22}};
  for (const SideName side : {SideName::Starboard, SideName::Port}) {
    const auto runs = runs_of(widening_box(), side, 20);
    BOOST_TEST_REQUIRE(runs.size() == std::size(rows));
    for (std::size_t i = 0; i < runs.size(); ++i) {
      BOOST_TEST((runs[i].side == side));
      BOOST_TEST(std::abs(runs[i].from.in_mm() - rows[i].from) < 1e-5);
      BOOST_TEST(std::abs(runs[i].to.in_mm() - rows[i].to) < 1e-5);
      BOOST_TEST(runs[i].size.in_mm() == rows[i].size);
      BOOST_TEST(runs[i].needed_mm2 == rows[i].needed, tolerance(1e-8));
      BOOST_TEST(runs[i].beads == 1u);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_constant_section_makes_one_run_a_side) {
  // derived: 50 x 3 x 1.1 = 165 needs 200, the triangle of 20; over corners and knots
  const auto runs = runs_of(box_joint(2000, 1000, {}), SideName::Starboard, 50);
  BOOST_TEST_REQUIRE(runs.size() == 1u);
  BOOST_TEST(runs[0].to.in_mm() == 2500, tolerance(1e-12));
  BOOST_TEST(runs[0].area_mm2 == 200);
  BOOST_TEST(runs[0].needed_mm2 == 165, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_section_just_a_beads_own_takes_that_bead_all_along) {
  // derived: a band of 45.4545.. at 3 mm with 10 % more needs 150; a triangle of
  // sqrt(300) covers just that, on a curve where every sample rounds its own way
  Joint joint = circle_joint(800, 25, {});
  const double section = 45 * (3 + 9. / 2 / 800) * 1.1;  // with the circle's turn
  joint.adhesive->bead_sizes = {Length::mm(std::sqrt(2 * section) * (1 + 1e-4)),
                                Length::mm(30)};
  const auto runs = runs_of(joint, SideName::Starboard, 45);
  BOOST_TEST(runs.size() == 1u);
}

BOOST_AUTO_TEST_CASE(an_opening_parts_two_runs) {
  Joint joint = circle_joint(800, 25, {});
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(404), Length::mm(808)}, "well"});
  const auto runs = runs_of(joint, SideName::Starboard, 50);
  BOOST_TEST_REQUIRE(runs.size() == 2u);
  // derived: on the sheer the opening is shorter by 800 / 808
  BOOST_TEST(runs[0].to.in_mm() == 400, tolerance(1e-4));
  BOOST_TEST(runs[1].from.in_mm() == 800, tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(several_equal_beads_lie_where_the_largest_is_too_small) {
  Joint joint = box_joint(2000, 1000, {});
  joint.adhesive->bead_sizes = {Length::mm(6), Length::mm(10)};
  const auto runs = runs_of(joint, SideName::Transom, 50);
  BOOST_TEST_REQUIRE(runs.size() == 1u);
  // derived: 165 / 50 = 3.3
  BOOST_TEST(runs[0].beads == 4u);
  BOOST_TEST(runs[0].area_mm2 == 200);
}

BOOST_AUTO_TEST_CASE(a_swell_between_two_knots_is_not_missed) {
  // derived: on the ellipse of half axes 2000 and 700 the lip's strip is 3 + 4.5 turn
  // wide, widest at the bow and the stern and least amidships; the bead between the two
  // is passed once from the bow to midships and once again aft
  std::vector<Point3> points;
  for (int i = 0; i <= 12; ++i) {
    const double angle = M_PI * i / 12;
    points.emplace_back(2000 - 2000 * std::cos(angle),
                        i % 12 == 0 ? 0 : 700 * std::sin(angle), 0);
  }
  Joint joint = example_joint(points, {});
  const double amidships = 50 * 1.1 * (3 + 4.5 * 700 / (2000. * 2000));
  joint.adhesive->bead_sizes = {Length::mm(std::sqrt(2 * (amidships + 0.05))),
                                Length::mm(30)};
  const auto runs = runs_of(joint, SideName::Starboard, 50);
  BOOST_TEST_REQUIRE(runs.size() == 3u);
  BOOST_TEST(runs[0].size.in_mm() == 30);
  BOOST_TEST(runs[2].size.in_mm() == 30);
  // property: the boat is the same fore and aft, but for the spline
  BOOST_TEST((runs[0].to - runs[0].from).in_mm() == (runs[2].to - runs[2].from).in_mm(),
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(what_is_laid_is_each_runs_section_by_its_length) {
  std::vector<BeadRun> runs(2);
  runs[0].to = Length::mm(1000);
  runs[0].area_mm2 = 50;
  runs[1].from = Length::mm(1000);
  runs[1].to = Length::mm(3000);
  runs[1].area_mm2 = 72;
  // derived: 1 m of 50 mm2 is 50 ml, 2 m of 72 mm2 are 144 ml
  BOOST_TEST(bead_volume(runs).in_ml() == 194, tolerance(1e-14));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

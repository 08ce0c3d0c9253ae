#include "joint/mechanics/torsion.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <utility>

#include "joint/mechanics/line_load.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

BOOST_AUTO_TEST_SUITE(torsion_test)

/// A tube 200 mm across as a ring of plates.
std::vector<SectionPlate> tube(int count, double thickness) {
  std::vector<SectionPlate> plates;
  const auto at = [&](int i) { return 2 * pi * (i % count) / count; };
  for (int i = 0; i < count; ++i)
    plates.push_back({100 * std::cos(at(i)), 100 * std::sin(at(i)),
                      100 * std::cos(at(i + 1)), 100 * std::sin(at(i + 1)), thickness,
                      1, SectionPart::Hull});
  return plates;
}

BOOST_AUTO_TEST_CASE(a_fixed_tube_needs_the_wall_of_the_textbook) {
  // derived: half of 30 kN m to either end, q = T/(2 pi 100^2); for 200 N/mm2 q/200;
  // for 2 degrees in 1 m at G = 25000 the wall at which the twist is that. T. H. G.
  // Megson, Structural and Stress Analysis, about 1.2 and 2.7 mm: from memory, confirm
  PlainWorking work;
  const double Am = pi * 100 * 100;
  const double q = torsion_flow(work, {15e6, Am, 25000, 0});
  BOOST_TEST(q == 238.732, tolerance(3e-6));
  BOOST_TEST(q / 200 == 1.19366, tolerance(4e-6));
  const double twist_at_1mm = torsion_twist(work, {15e6, Am, 25000, 200 * pi});
  BOOST_TEST(twist_at_1mm * 1000 / (2 * pi / 180) == 2.73567, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_boat_as_a_box_has_the_worked_flow) {
  // derived: 5e6/(2 x 2500 x 1100), times 150
  const auto wall = wall_shape({{-1250, 0, 1250, 0, 10, 1, SectionPart::Hull},
                                {1250, 0, 1250, 1100, 6, 1, SectionPart::Hull},
                                {1250, 1100, -1250, 1100, 5, 1, SectionPart::Deck},
                                {-1250, 1100, -1250, 0, 6, 1, SectionPart::Hull}});
  BOOST_TEST_REQUIRE(wall.has_value());
  BOOST_TEST(wall->enclosed == 2.75e6, tolerance(1e-12));
  BOOST_TEST(wall->sum_dst == 250 + 2 * 1100. / 6 + 500, tolerance(1e-12));
  PlainWorking work;
  const double q = torsion_flow(work, {5e6, wall->enclosed, 3000, wall->sum_dst});
  BOOST_TEST(q == 0.909091, tolerance(1e-6));
  BOOST_TEST(fastener_load(work, q, 150) == 136.364, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_ring_of_many_plates_encloses_the_circle) {
  // derived: the polygon's area is count/2 R^2 sin(2 pi/count), its length
  // 2 count R sin(pi/count)
  const auto wall = wall_shape(tube(720, 4));
  BOOST_TEST_REQUIRE(wall.has_value());
  BOOST_TEST(wall->enclosed == 360 * 10000 * std::sin(2 * pi / 720), tolerance(1e-12));
  BOOST_TEST(wall->sum_dst == 1440 * 100 * std::sin(pi / 720) / 4, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_area_is_the_same_from_wherever_and_whichever_way_round) {
  // property
  auto moved = tube(12, 4);
  for (SectionPlate& plate : moved) {
    std::swap(plate.y_1, plate.y_2);
    std::swap(plate.z_1, plate.z_2);
    plate.z_1 += 700, plate.z_2 += 700;
  }
  std::reverse(moved.begin(), moved.end());
  const auto one = wall_shape(tube(12, 4)), other = wall_shape(moved);
  BOOST_TEST_REQUIRE((one.has_value() && other.has_value()));
  BOOST_TEST(one->enclosed == other->enclosed, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_wall_that_is_not_closed_is_refused) {
  auto open = tube(12, 4);
  open.erase(open.begin() + 5);
  auto thin = tube(12, 4);
  thin[2].thickness = 0;
  const struct {
    std::vector<SectionPlate> plates;
    const char *where, *message;
  } rows[] = {
      {{}, "plate", "not a closed section: three plates or more"},
      {open, "plate[5]", "section open here: start where the last plate ends"},
      {thin, "plate[2]", "not a plate: a length, a thickness and a modulus above 0"},
  };
  for (const auto& row : rows) {
    const auto wall = wall_shape(row.plates);
    BOOST_TEST_REQUIRE(!wall.has_value());
    BOOST_TEST(wall.error().front().where == row.where);
    BOOST_TEST(wall.error().front().message == row.message);
  }
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  BOOST_TEST(torsion_flow(work, {5e6, 2.75e6, 3000., 1100.}).value() ==
             torsion_flow(plain, {5e6, 2.75e6, 3000, 1100}));
  BOOST_TEST(torsion_twist(work, {5e6, 2.75e6, 3000., 1100.}).value() ==
             torsion_twist(plain, {5e6, 2.75e6, 3000, 1100}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

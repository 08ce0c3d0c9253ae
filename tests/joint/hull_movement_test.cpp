#include "joint/hull_movement.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Perimeter box() {
  auto found = perimeter(box_joint(4000, 2000, {}));
  BOOST_TEST_REQUIRE(found.has_value());
  return std::move(*found);
}

HullMovement pushed(const Perimeter& perimeter, std::vector<HullPush> pushes) {
  auto movement = HullMovement::through(perimeter, pushes);
  BOOST_TEST_REQUIRE(movement.has_value());
  return std::move(*movement);
}

double y_at(const HullMovement& movement,
            const Perimeter& perimeter,
            SideName name,
            double girth_mm) {
  const PerimeterSide& side = *perimeter.side(name);
  return movement.at(side, side.sheer.place_at(Length::mm(girth_mm))).y_mm;
}

BOOST_AUTO_TEST_SUITE(hull_movement)

BOOST_AUTO_TEST_CASE(a_side_pushed_at_its_middle_bends_as_a_beam_between_its_corners) {
  // derived: simply supported over 4000 with 9 at the middle, at a quarter
  // 9 (3 l^2 x - 4 x^3) / l^3 = 9 x 11 / 16; the bow, 1000 long, is not bent
  const Perimeter boat = box();
  const HullMovement movement =
      pushed(boat, {{Length::mm(2000), Length::mm(9), "spreader[0].x"}});
  BOOST_TEST(y_at(movement, boat, SideName::Starboard, 3000) == 9,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(y_at(movement, boat, SideName::Port, 3000) == -9,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(y_at(movement, boat, SideName::Starboard, 2000) == 9 * 11. / 16,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(y_at(movement, boat, SideName::Port, 4000) == -9 * 11. / 16,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(y_at(movement, boat, SideName::Starboard, 500) == 0);
  BOOST_TEST(y_at(movement, boat, SideName::Transom, 300) == 0);
}

BOOST_AUTO_TEST_CASE(the_transom_goes_with_its_corners) {
  // derived: the corners at y = 1000 and -1000 go out by 4, so at y = 500 it is 2
  const Perimeter boat = box();
  const HullMovement movement =
      pushed(boat, {{Length::mm(4000), Length::mm(4), "beam_reading[0].x"}});
  BOOST_TEST(y_at(movement, boat, SideName::Transom, 500) == 2,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::abs(y_at(movement, boat, SideName::Transom, 1000)) < 1e-12);
}

BOOST_AUTO_TEST_CASE(its_rate_is_that_of_its_movement) {
  const Perimeter boat = box();
  const HullMovement movement = pushed(boat, {{Length::mm(1500), Length::mm(9), "a"},
                                              {Length::mm(3100), Length::mm(-3), "b"}});
  for (const SideName name : {SideName::Starboard, SideName::Port}) {
    const PerimeterSide& side = *boat.side(name);
    Place place = side.sheer.place_at(Length::mm(2600));
    const double rate = movement.at(side, place).by_u;
    place.u_mm += 0.01;
    const double after = movement.at(side, place).y_mm;
    place.u_mm -= 0.02;
    BOOST_TEST(std::abs((after - movement.at(side, place).y_mm) / 0.02 - rate) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(no_push_moves_nothing) {
  const Perimeter boat = box();
  const HullMovement movement = pushed(boat, {});
  BOOST_TEST(y_at(movement, boat, SideName::Starboard, 2500) == 0);
  BOOST_TEST(y_at(HullMovement(), boat, SideName::Port, 2500) == 0);
}

BOOST_AUTO_TEST_CASE(a_place_that_a_side_does_not_have_or_has_twice_is_refused) {
  const Perimeter boat = box();
  const auto off =
      HullMovement::through(boat, {{Length::mm(4800), Length::mm(1), "spreader[0].x"}});
  BOOST_TEST_REQUIRE(!off.has_value());
  BOOST_TEST(off.error().front().where == "spreader[0].x");
  BOOST_TEST(off.error().front().message ==
             "x = 4800.0 mm is met nowhere on the starboard sheer: one that the side "
             "passes once");
  const auto twice = HullMovement::through(
      boat, {{Length::mm(1500), Length::mm(1), "spreader[0].x"},
             {Length::mm(1500.4), Length::mm(1), "spreader[1].x"}});
  BOOST_TEST_REQUIRE(!twice.has_value());
  BOOST_TEST(twice.error().front().where == "spreader[1].x");
  BOOST_TEST(twice.error().front().message ==
             "x = 1500.4 mm is given twice: one of the two is to go");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

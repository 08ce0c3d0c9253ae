#include "joint/tight_bends.h"

#include <boost/test/unit_test.hpp>
#include <numbers>

#include "joint/perimeter.h"
#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

std::vector<std::pair<Length, Length>> bends_on(const Perimeter& perimeter,
                                                const PerimeterSide& side,
                                                double radius_mm) {
  return tight_bends(side.drill_line, corner_knots(perimeter), Length::mm(radius_mm));
}

Perimeter perimeter_of(const Joint& joint) {
  auto perimeter = sheerlap::perimeter(joint);
  BOOST_TEST_REQUIRE(perimeter.has_value());
  return std::move(*perimeter);
}

BOOST_AUTO_TEST_SUITE(tight_bends_suite)

BOOST_AUTO_TEST_CASE(a_circle_is_tight_under_a_greater_radius_and_not_under_a_less) {
  // derived: the drill line of a lip 3 + 5 mm outside a circle of 200 has radius 208
  const Perimeter perimeter = perimeter_of(circle_joint(200, 61, {}));
  const SideLine& line = perimeter.sides.front().drill_line;
  BOOST_TEST(bends_on(perimeter, perimeter.sides.front(), 207.9).empty());
  const auto bends = bends_on(perimeter, perimeter.sides.front(), 208.1);
  BOOST_TEST_REQUIRE(bends.size() == 1u);
  BOOST_TEST(bends[0].first.in_mm() == 0);
  BOOST_TEST(bends[0].second.in_mm() == line.length().in_mm(),
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_parabola_is_tight_about_its_vertex) {
  // derived: y^2 = 4 f x has the radius 2 f (1 + x / f)^(3/2). A spline takes the
  // points (f t^2, 2 f t) up exactly if they are evenly spaced in t only in the limit,
  // so the rows stand close: 2 mm of chord. With f = 100 the sheer's radius is 300 at
  // x = f (1.5^(2/3) - 1), and the drill line's, 8 mm outside it, is 308 there; the
  // drill line's length to there is the sheer's plus 8 times the turn
  const double focus = 100;
  std::vector<Point3> points;
  for (int i = 0; i <= 400; ++i) {
    const double t = 4. * i / 400;
    points.emplace_back(focus * t * t, 2 * focus * t, 0);
  }
  points.emplace_back(focus * 16, 0, 0);
  Joint joint = example_joint(points, {});
  const Perimeter perimeter = perimeter_of(joint);
  const auto bends = bends_on(perimeter, perimeter.sides.front(), 308);
  BOOST_TEST_REQUIRE(!bends.empty());
  const double t = std::sqrt(std::pow(1.5, 2. / 3) - 1);
  const double sheer = focus * (t * std::hypot(1, t) + std::asinh(t));
  BOOST_TEST(bends[0].first.in_mm() == 0);
  BOOST_TEST(bends[0].second.in_mm() == sheer + 8 * std::atan(t),
             boost::test_tools::tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(chords_bend_as_the_arc_they_stand_for) {
  // derived: chords of a circle of 200 turn by the angle each spans, and the drill line
  // 8 mm outside has chords of a circle of 208 / cos(half the angle): at 1.5 degrees a
  // chord its radius is 208 to 1e-4
  Joint joint = circle_joint(200, 121, {});
  joint.sheer.curve = CurveKind::Chords;
  const Perimeter perimeter = perimeter_of(joint);
  BOOST_TEST(bends_on(perimeter, perimeter.sides.front(), 207.9).empty());
  BOOST_TEST(bends_on(perimeter, perimeter.sides.front(), 208.1).size() == 1u);
}

BOOST_AUTO_TEST_CASE(a_corner_is_no_bend) {
  const Perimeter perimeter = perimeter_of(box_joint(4000, 2000, {}));
  for (const PerimeterSide& side : perimeter.sides)
    BOOST_TEST(bends_on(perimeter, side, 1e4).empty());
}

BOOST_AUTO_TEST_CASE(bends_with_no_room_for_a_head_between_them_are_one) {
  // property: a scribbled side, its rows 0.6 mm apart, bends to and fro at every row
  std::vector<Point3> points{{0, 0, 0}};
  for (int i = 0; i <= 1000; ++i)
    points.emplace_back(0.6 * i, 300 + (i % 2 == 0 ? 0.001 : 0), 0);
  points.emplace_back(700, 0, 0);
  const Perimeter perimeter = perimeter_of(example_joint(points, {}));
  const auto bends = bends_on(perimeter, perimeter.sides.front(), 150);
  BOOST_TEST(!bends.empty());
  for (std::size_t i = 1; i < bends.size(); ++i)
    BOOST_TEST((bends[i].first - bends[i - 1].second).in_mm() >= 1);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

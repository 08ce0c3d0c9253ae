#include "joint/sheets/plan_line.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "joint/perimeter.h"
#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

double distance_to(const std::vector<Point2>& line, const Point2& point) {
  double least = 1e300;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const Vector2 along = line[i] - line[i - 1];
    const double share =
        std::clamp((point - line[i - 1]).dot(along) / along.squaredNorm(), 0.0, 1.0);
    least = std::min(least, (line[i - 1] + share * along - point).norm());
  }
  return least;
}

BOOST_AUTO_TEST_SUITE(plan_line_suite)

BOOST_AUTO_TEST_CASE(points_in_line_are_left_out_and_corners_kept) {
  const std::vector<Point2> line{{0, 0}, {1, 0}, {2, 0}, {2, 5}, {2, 9}};
  const auto less = simplified(line, 0);
  BOOST_TEST_REQUIRE(less.size() == 3U);  // derived: the ends and the one corner
  BOOST_TEST((less[1] == Point2(2, 0)));
  BOOST_TEST(simplified({{0, 0}, {3, 0.1}, {6, 0}}, 0.2).size() == 2U);
  BOOST_TEST(simplified({{0, 0}, {3, 0.3}, {6, 0}}, 0.2).size() == 3U);
}

BOOST_AUTO_TEST_CASE(a_line_that_comes_back_to_its_start_keeps_its_furthest_point) {
  const auto less = simplified({{0, 0}, {5, 0}, {9, 0}, {4, 0}, {0, 0}}, 0.1);
  BOOST_TEST_REQUIRE(less.size() == 3U);
  BOOST_TEST((less[1] == Point2(9, 0)));
}

BOOST_AUTO_TEST_CASE(no_point_of_a_circle_is_further_from_its_polyline_than_asked) {
  const auto joint = circle_joint(1000, 41, {});
  const auto line = perimeter(joint);
  BOOST_TEST_REQUIRE(line.has_value());
  const SideLine& sheer = line->sides[0].sheer;
  const double length_mm = sheer.length().in_mm();
  for (const double within : {0.1, 2.0}) {
    const auto points = plan_line(sheer, {Length(), sheer.length(), 0, within});
    for (int i = 0; i <= 500; ++i) {
      const Place place = sheer.place_at(Length::mm(length_mm * i / 500));
      const Point2 on_line = sheer.line().at(place).point.head<2>();
      // property: both the cuts and what is left out may be off by `within`
      BOOST_TEST(distance_to(points, on_line) <= 2 * within);
    }
    // derived: n chords of a quarter circle of radius r are r (pi / 2n)^2 / 8 off it;
    // four times that count is plenty
    const double least = std::numbers::pi * std::sqrt(1000 / (8 * within));
    BOOST_TEST(static_cast<double>(points.size()) < 4 * least);
  }
}

BOOST_AUTO_TEST_CASE(a_line_moved_outboard_of_a_circle_is_a_larger_circle) {
  const auto line = perimeter(circle_joint(1000, 41, {}));
  BOOST_TEST_REQUIRE(line.has_value());
  const SideLine& sheer = line->sides[0].sheer;
  for (const Point2& point : plan_line(sheer, {Length(), sheer.length(), 100, 0.1}))
    // derived: radius 1100 about (1000, 0); the spline through 41 points is within
    // 0.01 mm of the circle but at its free ends
    BOOST_TEST((point - Point2(1000, 0)).norm() == 1100.0, tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(a_drawing_has_starboard_up_and_the_bow_to_the_left) {
  BOOST_TEST((drawn_point({100, 50}) == Point2(100, -50)));
  BOOST_TEST(path_data({{0, -0.04}, {1.26, 2}}, 1) == "M0 0L1.3 2");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

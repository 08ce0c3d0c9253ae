#include "joint/gap_profile.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A box's half; rows `step_mm` apart for 60 mm on both sides of its transom corner.
Joint box_with_close_rows(double step_mm, CurveKind kind) {
  std::vector<Point3> points{{0, 0, 0}, {0, 500, 0}, {1000, 500, 0}};
  for (double x = 1940; x < 2000; x += step_mm) points.emplace_back(x, 500, 0);
  for (double y = 500; y > 440; y -= step_mm) points.emplace_back(2000, y, 0);
  points.emplace_back(2000, 0, 0);
  ExampleFaces faces;
  faces.hull_low = -24;  // cut back by 24 at the foot, by 0 at the top
  faces.lip_low = 6;
  Joint joint = example_joint(points, faces);
  joint.sheer.curve = kind;
  return joint;
}

BOOST_AUTO_TEST_SUITE(gap_profile)

BOOST_AUTO_TEST_CASE(gaps_beside_a_corner_do_not_hang_on_the_rows_there) {
  // property: with rows 60 mm apart the cut lies within one span, with rows 2.5 mm
  // apart it goes over ten; the gap at each girth and depth is the same
  for (const CurveKind kind : {CurveKind::Chords, CurveKind::Spline}) {
    const Perimeter plain = perimeter_of(box_with_close_rows(60, kind));
    const Perimeter close = perimeter_of(box_with_close_rows(2.5, kind));
    for (std::size_t i = 0; i < 3; ++i) {
      const GapProfile expected(plain, plain.sides[i]);
      const GapProfile profile(close, close.sides[i]);
      const double length = plain.sides[i].sheer_length.in_mm();
      for (const double girth : {0., 3., 11., 23., 25., length - 25, length - 23,
                                 length - 11, length - 3, length})
        for (const double depth : {0., 20., 50.}) {
          const auto gap = [&](const GapProfile& at, const Perimeter& boat) {
            return at.gap_mm(boat.sides[i].sheer.place_at(Length::mm(girth)), depth);
          };
          BOOST_TEST(gap(profile, close) == gap(expected, plain), tolerance(1e-9));
        }
      BOOST_TEST(!profile.lost().has_value());
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

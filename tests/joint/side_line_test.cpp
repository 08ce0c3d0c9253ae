#include "joint/side_line.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(side_line)

BOOST_AUTO_TEST_CASE(a_path_names_its_spans_either_way) {
  // derived: 7 spans; from knot 5 on: 5, 6, 0; from knot 2 back: 1, 0, 6
  const SidePath forward{5, 3, true};
  const SidePath back{2, 3, false};
  const std::size_t on[] = {5, 6, 0};
  const std::size_t backwards[] = {1, 0, 6};
  for (std::size_t k = 0; k < 3; ++k) {
    BOOST_TEST(forward.span(k, 7) == on[k]);
    BOOST_TEST(back.span(k, 7) == backwards[k]);
  }
}

BOOST_AUTO_TEST_CASE(a_place_is_found_again_by_its_girth) {
  // property: round trip on every side, both ways along the curve
  const Perimeter boat =
      perimeter_of(with_uneven_offsets(example_joint(small_boat(), {})));
  for (const PerimeterSide& side : boat.sides)
    for (const SideLine* line : {&side.sheer, &side.drill_line, &side.hull_line})
      for (int i = 0; i <= 200; ++i) {
        const Length girth = line->length() * (i / 200.);
        BOOST_TEST(std::abs(line->girth_at(line->place_at(girth)).in_mm() -
                            girth.in_mm()) < 1e-9);
      }
}

BOOST_AUTO_TEST_CASE(girths_run_on_from_span_to_span) {
  const Perimeter boat = perimeter_of(example_joint(small_boat(), {}));
  for (const PerimeterSide& side : boat.sides) {
    const SideLine& line = side.drill_line;
    double run = 0;
    for (std::size_t k = 0; k < line.path().span_count; ++k) {
      BOOST_TEST(line.girth_at_span(k).in_mm() == run, tolerance(1e-14));
      const std::size_t span = line.path().span(k, boat.hull->curve().spans());
      BOOST_TEST(line.index_of(span) == k);
      run += line.line().span_mm(span);
    }
    BOOST_TEST(line.length().in_mm() == run, tolerance(1e-14));
  }
}

BOOST_AUTO_TEST_CASE(girths_off_the_ends_are_the_ends) {
  const Perimeter boat = perimeter_of(box_joint(2000, 1000, {}));
  const SideLine& line = boat.side(SideName::Starboard)->drill_line;
  const auto point = [&](double girth) -> Point3 {
    return line.line().at(line.place_at(Length::mm(girth))).point;
  };
  BOOST_TEST((point(-5) - Point3(-8, 0, -25)).norm() < 1e-9);
  BOOST_TEST((point(1e6) - Point3(2008, 508, -25)).norm() < 1e-9);
}

BOOST_AUTO_TEST_CASE(a_side_ends_where_its_corner_cuts_it_back) {
  // derived: the hull face stands 20 mm inboard, so it is cut back 20 mm at the transom
  // corner, over rows 3 mm apart; the girth ends there and so does the place
  std::vector<Point3> points{{0, 0, 0}, {0, 500, 0}};
  for (double x = 100; x < 1900; x += 300) points.emplace_back(x, 500, 0);
  for (double x = 1900; x < 2000; x += 3) points.emplace_back(x, 500, 0);
  for (double y = 500; y > 400; y -= 3) points.emplace_back(2000, y, 0);
  points.emplace_back(2000, 0, 0);
  ExampleFaces faces;
  faces.hull_top = faces.hull_low = -20;
  for (const CurveKind kind : {CurveKind::Chords, CurveKind::Spline}) {
    Joint joint = example_joint(points, faces);
    joint.sheer.curve = kind;
    const Perimeter boat = perimeter_of(joint);
    for (const SideName name : {SideName::Starboard, SideName::Port}) {
      const SideLine& line = boat.side(name)->hull_line;
      BOOST_TEST(line.length().in_mm() == 480 + 1960, tolerance(1e-9));
      const Place end = line.place_at(line.length());
      BOOST_TEST(std::abs(line.line().at(end).point.x() - 1980) < 1e-9);
      BOOST_TEST(std::abs(std::abs(line.line().at(end).point.y()) - 480) < 1e-9);
      BOOST_TEST(line.girth_at(end).in_mm() == line.length().in_mm(), tolerance(1e-12));
    }
    const SideLine& transom = boat.side(SideName::Transom)->hull_line;
    BOOST_TEST(transom.length().in_mm() == 960, tolerance(1e-9));
    for (const Length end : {Length(), transom.length()})
      BOOST_TEST(std::abs(transom.line().at(transom.place_at(end)).point.x() - 1980) <
                 1e-9);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

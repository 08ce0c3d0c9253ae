#include "joint/sheets/strip_line.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/sheets/arc_strip.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(strip_line_suite)

BOOST_AUTO_TEST_CASE(points_are_found_by_girth_on_the_drill_line) {
  // derived: on an arc of radius 500 the point at an angle of 0.6 from the start; the
  // tolerance is the sagitta of 2 mm of it, 2 * 2 / (8 * 500)
  const StripLine strip = arc_strip({500, 800});
  const Length girth = arc_strip_start + Length::mm(300);
  const Point2 line = strip.at(StripEdge::DrillLine, girth);
  BOOST_TEST(std::abs(line.x() + 500 * std::sin(0.6)) < 1e-3);
  BOOST_TEST(std::abs(line.y() - (500 - 500 * std::cos(0.6))) < 1e-3);
  const Point2 sheer = strip.at(StripEdge::Sheer, girth);
  BOOST_TEST(std::abs((sheer - line).norm() - 28) < 1e-3);
  const Point2 low = strip.at(StripEdge::Low, girth);
  BOOST_TEST(std::abs((low - line).norm() - 22) < 1e-3);
}

BOOST_AUTO_TEST_CASE(girths_beyond_the_stretch_are_taken_for_its_ends) {
  const StripLine strip = arc_strip({0, 800});
  BOOST_TEST(strip.at(StripEdge::DrillLine, Length()).x() == 0.0);
  BOOST_TEST(strip.at(StripEdge::DrillLine, Length::mm(5000)).x() == -800.0);
}

BOOST_AUTO_TEST_CASE(a_part_of_an_edge_starts_and_ends_where_it_is_asked_to) {
  const StripLine strip = arc_strip({0, 800});
  const auto part = strip.between(StripEdge::Sheer, arc_strip_start + Length::mm(101),
                                  arc_strip_start + Length::mm(205));
  BOOST_TEST(part.front().x() == -101.0);
  BOOST_TEST(part.back().x() == -205.0);
  for (std::size_t i = 1; i < part.size(); ++i)
    BOOST_TEST(part[i].x() < part[i - 1].x());
}

BOOST_AUTO_TEST_CASE(the_line_runs_left_but_on_port) {
  BOOST_TEST(arc_strip({0, 800}).runs_left());
  BOOST_TEST(!arc_strip({0, 800, 28, 22, SideName::Port}).runs_left());
  BOOST_TEST(arc_strip({0, 800}).along(Length::mm(300)).x() == -1.0);
}

BOOST_AUTO_TEST_CASE(chords_do_not_shorten_the_stretch) {
  // property: the last girth is that of the stretch, whatever the chords add up to
  const StripLine strip = arc_strip({60, 90});
  BOOST_TEST(strip.from().in_mm() == 100.0);
  BOOST_TEST(strip.to().in_mm() == 190.0);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

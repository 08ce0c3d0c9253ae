#include "geometry/flat_strip.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <functional>
#include <numbers>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

FaceLine line_at(const RuledFace& face, double depth_mm) {
  return FaceLine::at_depth(std::make_shared<const RuledFace>(face), depth_mm).value();
}

/// Every span of a line, from its start to its end.
std::vector<LinePart> all_of(const FaceLine& line) {
  std::vector<LinePart> parts;
  for (std::size_t span = 0; span < line.face().curve().spans(); ++span)
    parts.push_back({span, line.begin_u_mm(span), line.end_u_mm(span)});
  return parts;
}

FlatStrip strip_of(const RuledFace& face, double depth_mm, double thickness_mm = 0) {
  const FaceLine line = line_at(face, depth_mm);
  return flat_strip(line, all_of(line), thickness_mm);
}

/// The strip put where its first ruling's point and direction are told.
Point2 moved(const FlatStrip& strip, Point2 point, Point2 to, double angle) {
  const Vector2& along = strip.rulings.front().along;
  const double turn = angle - std::atan2(along.y(), along.x());
  return to + Eigen::Rotation2Dd(turn) * (point - strip.rulings.front().line);
}

/// A face over points at even offsets and one of each hand's own at every knot.
RuledFace face_over(const std::shared_ptr<const Curve>& curve,
                    const std::function<RuledOffsets(double)>& offsets) {
  std::vector<RuledOffsets> at_knots;
  for (std::size_t knot = 0; knot < curve->knots(); ++knot)
    at_knots.push_back(
        offsets(static_cast<double>(knot) / static_cast<double>(curve->knots() - 1)));
  return {curve, at_knots};
}

using Edge = Point2 FlatRuling::*;

double flat_length(const FlatStrip& strip, Edge edge) {
  double length = 0;
  for (std::size_t i = 1; i < strip.rulings.size(); ++i)
    length += (strip.rulings[i].*edge - strip.rulings[i - 1].*edge).norm();
  return length;
}

BOOST_AUTO_TEST_SUITE(flat_strip_suite)

BOOST_AUTO_TEST_CASE(an_upright_plane_lies_flat_as_its_own_side_view) {
  // derived: the face is the plane y = 0, so the pattern is (x, z)
  std::vector<Point3> points;
  for (int i = 0; i <= 40; ++i) {
    const double x = 50. * i;
    points.emplace_back(x, 0, 1e-4 * (x - 900) * (x - 900) + 20 * std::sin(x / 400));
  }
  const RuledFace face = even_face(open_curve(points), {0, 0, 60});
  const FaceLine line = line_at(face, 28);
  const FlatStrip strip = flat_strip(line, all_of(line), 0);
  const FacePoint first = line.at({0, 0});
  const double angle = std::atan2(first.by_u.z(), first.by_u.x());
  for (const FlatRuling& ruling : strip.rulings) {
    const Place place{ruling.part, ruling.u_mm};
    for (const auto& [flat, depth] :
         {std::pair{ruling.line, 28.}, {ruling.top, 0.}, {ruling.low, 60.}}) {
      const Point3 there = face.at(place, depth).point;
      const Point2 put = moved(strip, flat, {first.point.x(), first.point.z()}, angle);
      BOOST_TEST((put - Point2(there.x(), there.z())).norm() < 1e-6);
    }
  }
  BOOST_TEST(strip.distortion.worst_strain < 1e-9);
}

BOOST_AUTO_TEST_CASE(a_leaning_plane_lies_flat_with_its_slanting_rulings) {
  // derived: the sheer rises by 0.3 in 1, the face leans by 0.2: all in the plane
  // y = 0.2 (0.3 x - z); outboard of a line that goes in +x is +y
  std::vector<Point3> points;
  for (int i = 0; i <= 5; ++i) points.emplace_back(200. * i, 0, 60. * i);
  const FlatStrip strip = strip_of(even_face(open_curve(points), {0, 12, 60}), 28);
  const Vector3 along = Vector3(1, 0, 0.3).normalized();
  const Vector3 ruling = Vector3(0, 0.2, -1);
  const double lean = std::acos(along.dot(ruling) / ruling.norm());
  for (const FlatRuling& flat : strip.rulings) {
    const Vector2 down = flat.low - flat.top;
    BOOST_TEST(down.norm() == 60 * ruling.norm(), tolerance(1e-12));
    BOOST_TEST(std::acos(flat.along.dot(down) / down.norm()) == lean, tolerance(1e-9));
    BOOST_TEST((flat.line - strip.rulings.front().line).norm() == flat.run_mm,
               tolerance(1e-12));
  }
  BOOST_TEST(strip.rulings.back().run_mm == 1000 * std::hypot(1, 0.3),
             tolerance(1e-12));
  BOOST_TEST(strip.distortion.worst_strain < 1e-12);
}

BOOST_AUTO_TEST_CASE(an_upright_cylinder_unrolls) {
  // derived: round a circle of R the pattern is (R phi, z), z = 80 cos^2 phi; the start
  // is at phi = 0, where the line is level
  const double radius = 900;
  const RuledFace face =
      even_face(closed_curve(ellipse_points(900, 900, 720, 80)), {5, 5, 60});
  const FlatStrip strip = strip_of(face, 28);
  const Point2 start(0, 0);
  for (const FlatRuling& ruling : strip.rulings) {
    const Point3 there = face.at({ruling.part, ruling.u_mm}, 28).point;
    double phi = std::atan2(there.y(), -there.x());
    if (phi < -1e-9 || (phi < 1e-9 && ruling.part > 0)) phi += 2 * pi;
    const Point2 flat = moved(strip, ruling.line, start, 0);
    // the spline through 720 points of the circle is within 1e-6 of it
    BOOST_TEST(flat.x() - (radius + 5) * phi < 2e-5);
    BOOST_TEST(flat.x() - (radius + 5) * phi > -2e-5);
    BOOST_TEST(std::abs(flat.y() - (there.z() - 52)) < 2e-5);
  }
  BOOST_TEST(strip.distortion.worst_strain < 1e-7);
}

BOOST_AUTO_TEST_CASE(a_cone_unrolls_to_a_sector) {
  // derived: a cone that widens by 0.25 a mm of depth has its line of radius r on a
  // circle of r sqrt(1 + 0.25^2) / 0.25, its centre up the face
  const double lean = std::hypot(1, 0.25);
  const FlatStrip strip =
      strip_of(even_face(closed_curve(ellipse_points(800, 800, 720)), {3, 18, 60}), 28);
  const double radius = (800 + 3 + 0.25 * 28) * lean / 0.25;
  const FlatRuling& first = strip.rulings.front();
  const Point2 centre =
      first.line + radius * Vector2(-first.along.y(), first.along.x());
  for (const FlatRuling& ruling : strip.rulings) {
    BOOST_TEST((ruling.line - centre).norm() == radius, tolerance(1e-9));
    BOOST_TEST((ruling.top - centre).norm() == radius - 28 * lean, tolerance(1e-9));
    BOOST_TEST((ruling.low - centre).norm() == radius + 32 * lean, tolerance(1e-9));
  }
  BOOST_TEST(strip.rulings.back().run_mm == 2 * pi * 810, tolerance(1e-9));
  BOOST_TEST(strip.distortion.worst_strain < 1e-6);
}

BOOST_AUTO_TEST_CASE(a_thick_sheet_is_longer_by_half_its_thickness_times_the_turn) {
  // derived: once round, t / 2 x 2 pi; the handbook's batten: 6 mm through 60 degrees
  // 3.1 mm, common practice, no source
  const RuledFace face =
      even_face(closed_curve(ellipse_points(900, 900, 720)), {8, 8, 60});
  const FlatStrip strip = strip_of(face, 28, 6);
  BOOST_TEST(strip.rulings.back().bent_mm == 6 * pi, tolerance(1e-9));
  BOOST_TEST((strip.rulings.back().line - strip.rulings.front().line).norm() ==
                 2 * pi * 908 + 6 * pi,
             tolerance(1e-9));
  for (const FlatRuling& ruling : strip.rulings)
    if (ruling.part == 119 && ruling.u_mm == line_at(face, 28).end_u_mm(119))
      BOOST_TEST(std::abs(ruling.bent_mm - 3.1) < 0.05);
}

BOOST_AUTO_TEST_CASE(a_hollow_makes_a_thick_sheet_shorter) {
  // derived: anticlockwise seen from above, outboard is inside the circle
  auto points = ellipse_points(900, 900, 720);
  std::reverse(points.begin(), points.end());
  const FlatStrip strip = strip_of(even_face(closed_curve(points), {5, 5, 60}), 28, 4);
  BOOST_TEST(strip.rulings.back().bent_mm == -4 * pi, tolerance(1e-9));
  // of radius 895, all hollow; a cubic spline's curvature is off by a twelfth of its step
  // squared, (pi / 360)^2 / 12
  BOOST_TEST(strip.sharpest_hollow == 1. / 895, tolerance(1e-5));
  BOOST_TEST(strip.sharpest_convex == 0);
}

BOOST_AUTO_TEST_CASE(a_twisted_face_strains_its_edges_as_worked_out) {
  // derived: a straight sheer, the face leaning by m = 0 to M over L: the line at depth
  // 0 is straight, rulings stay square to it and are h sqrt(1 + m^2) long, so the flat
  // low edge is (x, h sqrt(1 + m^2)), the true one (x, h m, -h)
  const double length = 1200, lean = 0.6, lap = 60;
  std::vector<Point3> points;
  for (int i = 0; i <= 6; ++i) points.emplace_back(200. * i, 0, 0);
  const FlatStrip strip =
      strip_of(face_over(open_curve(points),
                         [&](double share) {
                           return RuledOffsets{0, lean * lap * share, lap};
                         }),
               0);
  const double by_x = lean / length;
  for (const FlatRuling& ruling : strip.rulings) {
    const double now = by_x * ruling.run_mm;
    const double flat = std::hypot(1, lap * by_x * now / std::hypot(1, now));
    BOOST_TEST(std::abs(ruling.low_strain - (flat / std::hypot(1, lap * by_x) - 1)) <
               1e-10);
    BOOST_TEST(std::abs(ruling.top_strain) < 1e-12);
  }
  BOOST_TEST(strip.distortion.low_mm < 0);
  // greatest where it does not lean yet
  BOOST_TEST(strip.distortion.worst_strain == 1 - 1 / std::hypot(1, lap * by_x),
             tolerance(1e-6));
}

/// How much longer the flat edges are than the face's own, top and low, all of them
/// measured by chords: `count` of them a span.
std::array<double, 2> longer_by_chords(const FaceLine& line, int count) {
  const RuledFace& face = line.face();
  std::vector<LinePart> parts;
  for (std::size_t span = 0; span < face.curve().spans(); ++span)
    for (int i = 0; i < count; ++i) {
      const double width = face.curve().chord_mm(span) / count;
      parts.push_back({span, i * width, (i + 1) * width});
    }
  const FlatStrip strip = flat_strip(line, parts, 0);
  double top = 0, low = 0;
  for (const LinePart& part : parts) {
    const Place from{part.span, part.from_u}, to{part.span, part.to_u};
    top += (face.at(to, 0).point - face.at(from, 0).point).norm();
    low += (face.at(to, face.lap_mm(to)).point - face.at(from, face.lap_mm(from)).point)
               .norm();
  }
  return {flat_length(strip, &FlatRuling::top) - top,
          flat_length(strip, &FlatRuling::low) - low};
}

BOOST_AUTO_TEST_CASE(the_distortion_is_what_the_edges_measure) {
  // reference: the edges of face and pattern measured point to point, against the
  // speeds the strip works with. The chords' sagittas go with the square of their
  // length: two lengths of chord tell what none would leave (L. F. Richardson)
  for (const unsigned seed : {1u, 2u, 3u}) {
    const auto curve = open_curve(winding_points(seed, 7));
    const RuledFace face = face_over(curve, [](double share) {
      return RuledOffsets{2 + 3 * share, 4 - 19 * share + 42 * share * share,
                          60 + 15 * share};
    });
    const FaceLine line = line_at(face, 28);
    const auto fine = longer_by_chords(line, 400);
    const auto coarse = longer_by_chords(line, 200);
    const FlatStrip strip = flat_strip(line, all_of(line), 0);
    // what is left is the fourth power of the chords
    BOOST_TEST(std::abs((4 * fine[0] - coarse[0]) / 3 - strip.distortion.top_mm) <
               1e-4);
    BOOST_TEST(std::abs((4 * fine[1] - coarse[1]) / 3 - strip.distortion.low_mm) <
               1e-4);
    BOOST_TEST(strip.distortion.worst_strain > 1e-5);
    // the line itself keeps its length
    double run = 0;
    for (std::size_t span = 0; span < curve->spans(); ++span) run += line.span_mm(span);
    BOOST_TEST(strip.rulings.back().run_mm == run, tolerance(1e-8));
  }
}

BOOST_AUTO_TEST_CASE(upright_walls_folded_at_corners_unfold_to_a_straight_strip) {
  // derived: walls of a prism; through a fold of 20 degrees a sheet's middle gains
  // pi / 9 x t / 2
  std::vector<Point3> points;
  for (int i = 0; i < 18; ++i)
    points.emplace_back(-500 * std::cos(i * pi / 9), 500 * std::sin(i * pi / 9), 0);
  const FlatStrip strip = strip_of(even_face(polygon(points), {6, 6, 60}), 28, 2);
  const FlatRuling& first = strip.rulings.front();
  const double side = 2 * (500 + 6 / std::cos(pi / 18)) * std::sin(pi / 18);
  BOOST_TEST(strip.rulings.back().run_mm == 18 * side, tolerance(1e-12));
  BOOST_TEST(strip.rulings.back().bent_mm == 17 * pi / 9, tolerance(1e-9));
  for (const FlatRuling& ruling : strip.rulings) {
    BOOST_TEST(ruling.along.x() == first.along.x(), tolerance(1e-9));
    BOOST_TEST(std::abs((ruling.line - first.line)
                            .dot(Vector2(-first.along.y(), first.along.x()))) < 1e-7);
  }
}

BOOST_AUTO_TEST_CASE(walls_of_a_pyramid_unfold_round_its_apex) {
  // derived: every ruling's low end is as far from the apex as on the pyramid; the
  // corner's slant is the same on both of its walls
  std::vector<Point3> points;
  for (int i = 0; i < 18; ++i)
    points.emplace_back(-500 * std::cos(i * pi / 9), 500 * std::sin(i * pi / 9), 0);
  const double lean = 0.2;
  const FlatStrip strip = strip_of(even_face(polygon(points), {0, lean * 60, 60}), 28);
  const double flat_side = 500 * std::cos(pi / 18);  // to the middle of a wall
  const double apex_height = flat_side / lean;
  const FlatRuling& first = strip.rulings.front();
  // of the first ruling, at a corner, in its wall
  const double half = (500 + 28 * lean / std::cos(pi / 18)) * std::sin(pi / 18);
  const double slant = std::hypot(apex_height + 28, (apex_height + 28) * lean);
  const Point2 apex = first.line + half * first.along +
                      slant * Vector2(-first.along.y(), first.along.x());
  for (const FlatRuling& ruling : strip.rulings) {
    const double along_wall = (ruling.line - apex).dot(ruling.along);
    BOOST_TEST((ruling.line - apex).norm() == std::hypot(slant, along_wall),
               tolerance(1e-7));
    BOOST_TEST(std::abs((ruling.line - apex).norm()) < std::hypot(slant, half) + 1e-5);
  }
}

BOOST_AUTO_TEST_CASE(a_kink_of_the_offsets_is_folded_on_its_ruling) {
  // derived: upright walls that go out by 30 in 300 and back again: the pattern is
  // straight
  std::vector<Point3> points{{0, 0, 0}, {300, 0, 0}, {600, 0, 0}, {900, 0, 0}};
  const auto curve = open_curve(points, true);
  const RuledFace face(curve, {{0, 0, 60}, {30, 30, 60}, {0, 0, 60}, {0, 0, 60}});
  const FlatStrip strip = strip_of(face, 28);
  const double length = 2 * std::hypot(300, 30) + 300;
  BOOST_TEST((strip.rulings.back().line - strip.rulings.front().line).norm() == length,
             tolerance(1e-9));
  for (const FlatRuling& ruling : strip.rulings)
    BOOST_TEST(std::abs(ruling.along.dot((ruling.low - ruling.top).normalized())) <
               1e-9);
}

BOOST_AUTO_TEST_CASE(a_sloping_wall_carried_on_to_a_mitre_lies_in_a_straight_strip) {
  // derived: upright walls of a prism, one that goes out by 30 in 300 up to a knuckle
  // and is carried on level with the curve from there to the mitre, 30 tan(turn / 2)
  for (const double turn : {0.05, 0.3, 0.9, 1.4}) {
    const auto curve =
        open_curve({{0, 0, 0},
                    {300, 0, 0},
                    {300 + 400 * std::cos(turn), -400 * std::sin(turn), 0}},
                   true);
    const RuledFace face(curve, {{0, 0, 60}, {30, 30, 60}, {30, 30, 60}});
    const FlatStrip strip = strip_of(face, 28);
    const double length = std::hypot(300, 30) + 2 * 30 * std::tan(turn / 2) + 400;
    BOOST_TEST(strip.rulings.back().run_mm == length, tolerance(1e-12));
    BOOST_TEST(
        (strip.rulings.back().line - strip.rulings.front().line).norm() == length,
        tolerance(1e-9));
    for (const FlatRuling& ruling : strip.rulings)
      BOOST_TEST(std::abs(ruling.along.dot((ruling.low - ruling.top).normalized())) <
                 1e-9);
    BOOST_TEST(strip.distortion.worst_strain < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(a_hollow_cut_back_over_rows_is_folded_on_its_own_mitre) {
  // derived: two leaning planes that turn by 60 degrees; each mm of depth the mitre
  // goes 0.2 tan(30 degrees) along either wall and hypot(1, 0.2) down it, so the flat
  // line turns by twice that angle. Rows of the straight walls that the cut passes over
  // change nothing
  const double turn = pi / 3;
  const Vector3 onward(std::cos(turn), std::sin(turn), 0);
  const Point3 knuckle(300, 0, 0);
  const double expected = 2 * std::atan(0.2 * std::tan(turn / 2) / std::hypot(1, 0.2));
  for (const auto& [before, after] :
       {std::pair{0., 0.}, {10., 0.}, {0., 10.}, {10., 10.}}) {
    std::vector<Point3> points{{0, 0, 0}};
    if (before > 0) points.push_back(knuckle - before * Vector3(1, 0, 0));
    points.push_back(knuckle);
    if (after > 0) points.push_back(knuckle + after * onward);
    points.push_back(knuckle + 300 * onward);
    const FlatStrip strip =
        strip_of(even_face(open_curve(points, true), {40, 52, 60}), 28);
    const Vector2& first = strip.rulings.front().along;
    const Vector2& last = strip.rulings.back().along;
    BOOST_TEST(std::abs(std::acos(first.dot(last)) - expected) < 1e-7,
               before << " and " << after << ": " << std::acos(first.dot(last)));
    BOOST_TEST(
        strip.rulings.back().run_mm == 600 - 2 * (40 + 0.2 * 28) * std::tan(turn / 2),
        tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_thick_sheet_bends_by_the_whole_turn_of_the_walls_it_lies_on) {
  // derived: half the thickness times the turn: the kink of the wall's slope, the same
  // with the other sign behind it is not there, so atan(0.1) and the knuckle's own
  const double turn = 0.3;
  const auto curve = open_curve(
      {{0, 0, 0}, {300, 0, 0}, {300 + 400 * std::cos(turn), -400 * std::sin(turn), 0}},
      true);
  const RuledFace face(curve, {{0, 0, 60}, {30, 30, 60}, {30, 30, 60}});
  const FlatStrip strip = strip_of(face, 28, 4);
  BOOST_TEST(strip.rulings.back().bent_mm == 2 * (std::atan(0.1) + turn),
             tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_part_as_short_as_rounding_strains_no_edge) {
  // property: a cut of the line, however near to a row or to another cut, leaves the
  // pattern as it is
  const RuledFace face =
      face_over(closed_curve(ellipse_points(900, 500, 24, 60)), [](double share) {
        return RuledOffsets{3, 6 + 2 * std::cos(9 * share),
                            55 + 5 * std::sin(7 * share)};
      });
  const FaceLine line = line_at(face, 28);
  const double end = line.end_u_mm(3);
  const FlatStrip whole = flat_strip(line, {{3, 10, end}}, 4);
  for (const double tiny : {1e-3, 1e-6, 1e-9, 1e-12, 3e-14}) {
    const FlatStrip cut = flat_strip(
        line, {{3, 10, 10 + tiny}, {3, 10 + tiny, end - tiny}, {3, end - tiny, end}},
        4);
    BOOST_TEST(
        std::abs(cut.distortion.worst_strain - whole.distortion.worst_strain) < 1e-9,
        tiny << ": " << cut.distortion.worst_strain << " and "
             << whole.distortion.worst_strain);
    // both sums of some 50 steps
    BOOST_TEST((cut.rulings.back().line - whole.rulings.back().line).norm() < 1e-7);
    BOOST_TEST(std::abs(cut.distortion.top_mm - whole.distortion.top_mm) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(a_strip_of_a_part_begins_and_ends_where_it_is_told) {
  const FaceLine line =
      line_at(even_face(closed_curve(ellipse_points(900, 500, 60)), {5, 8, 60}), 28);
  const FlatStrip strip = flat_strip(line, {{3, 10, 40}, {3, 40, 55}}, 0);
  BOOST_TEST(strip.rulings.front().u_mm == 10);
  BOOST_TEST(strip.rulings.back().u_mm == 55);
  BOOST_TEST(strip.rulings.back().run_mm == line.length_mm(3, 10, 55),
             tolerance(1e-10));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "geometry/enclosed_volume.h"

#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <random>

#include "tests/geometry/example_curves.h"
#include "tests/geometry/mesh_measure.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using std::numbers::pi;

constexpr DepthBand whole_lap{0, 1e9};

double spans_mm3(const RuledFace& inner, const RuledFace& outer, DepthBand band) {
  const EnclosedSpace space(inner, outer, band);
  double volume = 0;
  for (std::size_t span = 0; span < inner.curve().spans(); ++span)
    volume += space.volume_mm3({span, 0, inner.curve().chord_mm(span)});
  return volume;
}

double mitred_mm3(const RuledFace& inner, const RuledFace& outer, DepthBand band) {
  const EnclosedSpace space(inner, outer, band);
  double volume = spans_mm3(inner, outer, band);
  for (std::size_t knot = 0; knot < inner.curve().knots(); ++knot)
    if (inner.curve().joins_at(knot) && !inner.curve().smooth_at(knot))
      volume += space.mitre_volume_mm3(knot).value();
  return volume;
}

/// Numbers between limits, the same for the same seed in every library.
class Draw {
 public:
  explicit Draw(unsigned seed) : random_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * static_cast<double>(random_()) / 4294967296.0;
  }

 private:
  std::mt19937 random_;
};

/// Hull and lip offsets at each knot, at random; the laps too if none is given.
std::pair<RuledFace, RuledFace> drawn_faces(const std::shared_ptr<const Curve>& curve,
                                            unsigned seed,
                                            double least_gap,
                                            double lap_mm = 0) {
  Draw draw(seed);
  std::vector<RuledOffsets> inner, outer;
  for (std::size_t i = 0; i < curve->knots(); ++i) {
    const double lap = lap_mm > 0 ? lap_mm : draw.between(30, 80);
    const RuledOffsets hull{draw.between(-3, 3), draw.between(-8, 8), lap};
    inner.push_back(hull);
    outer.push_back({hull.top_mm + draw.between(least_gap, 8),
                     hull.low_mm + draw.between(least_gap, 8), lap});
  }
  return {RuledFace(curve, inner), RuledFace(curve, outer)};
}

BOOST_AUTO_TEST_SUITE(enclosed_volume)

BOOST_AUTO_TEST_CASE(a_parallel_lid_over_an_ellipse_encloses_a_strip_by_the_lap) {
  // derived: (P g + pi g^2) D, by Steiner's formula; P = 4 a E(e)
  const auto curve = closed_curve(ellipse_points(5000, 2000, 800));
  const double perimeter = 20000 * boost::math::ellint_2(std::sqrt(1 - 0.16));
  for (const double gap : {1., 3., 8.})
    BOOST_TEST(spans_mm3(even_face(curve, {0, 0, 50}), even_face(curve, {gap, gap, 50}),
                         whole_lap) == (perimeter * gap + pi * gap * gap) * 50,
               tolerance(1e-9));  // the spline's error in the girth
}

BOOST_AUTO_TEST_CASE(a_cone_shaped_lap_is_the_difference_of_two_frustums) {
  // derived: pi D (R1^2 + R1 R2 + R2^2)/3 each, by the band cut out of the lap
  const auto frustum = [](double top, double low, double depth) {
    return pi * depth * (top * top + top * low + low * low) / 3;
  };
  const auto curve = closed_curve(ellipse_points(400, 400, 400));
  const RuledFace hull = even_face(curve, {0, 10, 50});
  const RuledFace lip = even_face(curve, {3, 18, 50});
  BOOST_TEST(
      spans_mm3(hull, lip, whole_lap) == frustum(403, 418, 50) - frustum(400, 410, 50),
      tolerance(1e-8));
  BOOST_TEST(
      spans_mm3(hull, lip, {10, 40}) == frustum(406, 415, 30) - frustum(402, 408, 30),
      tolerance(1e-8));
}

BOOST_AUTO_TEST_CASE(the_volume_goes_with_the_plan_length_and_not_the_girth) {
  // derived: depth is vertical, so the volume is that of the level ellipse; the girth
  // of this sheer is longer by a fifth
  const auto level = closed_curve(ellipse_points(2000, 1000, 1600));
  const auto steep = closed_curve(ellipse_points(2000, 1000, 1600, 1500));
  double girth = 0;
  for (std::size_t span = 0; span < 1600; ++span) girth += steep->girth_mm(span);
  const double perimeter = 8000 * boost::math::ellint_2(std::sqrt(0.75));
  BOOST_TEST(girth > 1.15 * perimeter);
  const double expected = (perimeter * 3 + pi * 9) * 50;
  for (const auto& curve : {level, steep})
    BOOST_TEST(spans_mm3(even_face(curve, {0, 0, 50}), even_face(curve, {3, 3, 50}),
                         whole_lap) == expected,
               tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(only_where_the_lip_is_outside_does_volume_count) {
  // derived: along 1000 mm a wedge 3 mm wide at the top, 0 after 3/5 of a lap of 50
  const auto curve = open_curve({{0, 0, 0}, {1000, 0, 0}}, true);
  const RuledFace hull = even_face(curve, {0, 5, 50});
  BOOST_TEST(
      spans_mm3(hull, even_face(curve, {3, 3, 50}), whole_lap) == 1000 * 3 * 30 / 2.,
      tolerance(1e-12));
  BOOST_TEST(spans_mm3(hull, even_face(curve, {-1, 4, 50}), whole_lap) == 0);
  // from 6 mm open at one end to 2 mm into each other at the other: open over 3/4
  const RuledFace flat(curve, {{0, 0, 50}, {0, 0, 50}});
  const RuledFace closing(curve, {{6, 6, 50}, {-2, -2, 50}});
  BOOST_TEST(spans_mm3(flat, closing, whole_lap) == 750 * 6 / 2. * 50,
             tolerance(1e-12));
  // top 4 -> -4 and low -4 -> 4: by symmetry two equal corners,
  // 2 * integral over s in [0, 1/2] of (4 - 8 s)/2 * 25 ds * 1000 = 25000
  const RuledFace twisted(curve, {{4, -4, 50}, {-4, 4, 50}});
  BOOST_TEST(spans_mm3(flat, twisted, whole_lap) == 25000, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_band_is_cut_where_the_lap_is_less_deep) {
  // derived: lap 20 -> 60 over 800 mm, gap 3, band 10 to 40: the band is 10 -> 30 deep
  // until the lap is 40 (400 mm on), then 30
  const auto curve = open_curve({{0, 0, 0}, {800, 0, 0}}, true);
  const RuledFace hull(curve, {{0, 0, 20}, {0, 0, 60}});
  const RuledFace lip(curve, {{3, 3, 20}, {3, 3, 60}});
  BOOST_TEST(spans_mm3(hull, lip, {10, 40}) == 3 * (400 * 20. + 400 * 30.),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_volume_of_uneven_open_faces_is_that_of_their_mesh) {
  // reference: CGAL Polygon_mesh_processing::volume of a closed triangle mesh,
  // extrapolated; flared, uneven faces that stay apart, straight and curved
  for (unsigned seed = 0; seed < 6; ++seed)
    for (const bool straight : {true, false}) {
      const auto curve = open_curve(winding_points(seed, 4), straight);
      const auto [hull, lip] = drawn_faces(curve, seed, 0.5);
      for (const DepthBand band : {whole_lap, DepthBand{5, 25}}) {
        const EnclosedSpace space(hull, lip, band);
        for (std::size_t span = 0; span < 3; ++span) {
          const double chord = curve->chord_mm(span);
          const SpanPart part{span, 0.1 * chord, chord};
          const double expected = richardson(
              [&, &inner = hull, &outer = lip](int steps) {
                return meshed_volume_mm3(inner, outer, band, part, steps);
              },
              100);
          BOOST_TEST(space.volume_mm3(part) == expected, tolerance(2e-6));
        }
      }
    }
}

BOOST_AUTO_TEST_CASE(the_volume_of_crossing_faces_is_that_of_their_mesh) {
  // reference: as above; at an opening the mesh cuts the corner, so its error is larger
  for (unsigned seed = 0; seed < 8; ++seed) {
    const auto curve = open_curve(winding_points(seed, 4), seed % 2 == 0);
    const auto [hull, lip] = drawn_faces(curve, seed, -6);
    for (const DepthBand band : {whole_lap, DepthBand{5, 45}}) {
      const EnclosedSpace space(hull, lip, band);
      for (std::size_t span = 0; span < 3; ++span) {
        const SpanPart part{span, 0, curve->chord_mm(span)};
        const double expected = meshed_volume_mm3(hull, lip, band, part, 1000);
        BOOST_TEST(std::abs(space.volume_mm3(part) - expected) < 4e-6 * expected + 0.2);
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_mitred_box_is_worked_by_hand) {
  // derived: at each depth the ring between two rectangles, (L + 2b)(B + 2b) less the
  // inner one; b runs linearly, so Simpson's rule over the depth is exact
  const auto curve =
      polygon({{0, -600, 0}, {0, 600, 0}, {2000, 600, 0}, {2000, -600, 0}});
  const auto ring = [](double inner, double outer) {
    return (2000 + 2 * outer) * (1200 + 2 * outer) -
           (2000 + 2 * inner) * (1200 + 2 * inner);
  };
  const double expected = 50. / 6 * (ring(-4, 3) + 4 * ring(1, 5.5) + ring(6, 8));
  BOOST_TEST(mitred_mm3(even_face(curve, {-4, 6, 50}), even_face(curve, {3, 8, 50}),
                        whole_lap) == expected,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_volume_of_a_mitred_ring_is_that_of_its_mesh) {
  // reference: CGAL, each span a closed mesh cut at its mitres; corners to both sides,
  // sloped sheers, flared faces, offsets that differ from row to row
  const std::vector<Point3> points{{0, -600, 90},    {-30, 550, 40},   {1300, 700, 10},
                                   {1400, 420, 60},  {1750, 450, 120}, {1900, -480, 0},
                                   {1000, -790, 30}, {400, -750, 50}};
  CurveShape shape{true, false, std::vector<bool>(points.size(), true)};
  shape.knuckles[6] = shape.knuckles[7] = false;
  for (unsigned seed = 0; seed < 4; ++seed)
    for (const bool straight : {true, false}) {
      shape.straight = straight;
      const auto curve = std::make_shared<const Curve>(points, shape);
      const auto [hull, lip] = drawn_faces(curve, seed, 0.5, 50);
      const auto meshed = [&, &inner = hull, &outer = lip](int steps) {
        double volume = 0;
        for (std::size_t span = 0; span < curve->spans(); ++span)
          volume += meshed_mitred_volume_mm3(inner, outer, whole_lap, span, steps);
        return volume;
      };
      BOOST_TEST(mitred_mm3(hull, lip, whole_lap) == richardson(meshed, 100),
                 tolerance(1e-6));
    }
}

BOOST_AUTO_TEST_CASE(the_section_is_the_volume_for_each_unit_of_girth) {
  // property: its integral along a sloping straight span is the volume
  const auto curve = open_curve({{0, 0, 0}, {300, 0, 400}}, true);
  const RuledFace hull = even_face(curve, {0, 0, 50});
  const RuledFace lip = even_face(curve, {2, 4, 50});
  const EnclosedSpace space(hull, lip, whole_lap);
  BOOST_TEST(space.section_mm2({0, 100}) == 3 * 50 * 0.6, tolerance(1e-13));
  BOOST_TEST(space.volume_mm3({0, 0, 500}) == 3 * 50 * 300, tolerance(1e-13));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

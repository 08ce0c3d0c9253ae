#include "geometry/face_integral.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

#include "tests/geometry/example_curves.h"
#include "tests/geometry/mesh_measure.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

double area_mm2(const RuledFace& face, const SpanPart& part, DepthBand band) {
  const EnclosedSpace space(face, face, band);
  return face_integral(face, part, space, [](Place, double) { return 1.0; });
}

BOOST_AUTO_TEST_SUITE(face_integral_suite)

BOOST_AUTO_TEST_CASE(the_area_of_a_cone_is_that_of_a_frustum) {
  // derived: pi (R1 + R2) times the slant height; 3-4-5: 30 out in 40 down
  const auto curve = closed_curve(ellipse_points(400, 400, 400));
  const RuledFace face = even_face(curve, {0, 30, 40});
  double area = 0;
  for (std::size_t span = 0; span < 400; ++span)
    area += area_mm2(face, {span, 0, curve->chord_mm(span)}, {0, 1e9});
  BOOST_TEST(area == std::numbers::pi * (400 + 430) * 50,
             tolerance(1e-9));  // the spline's error
}

BOOST_AUTO_TEST_CASE(the_area_of_an_uneven_face_is_that_of_its_mesh) {
  // reference: CGAL Polygon_mesh_processing::area of a triangle mesh, extrapolated; the
  // lap ends above and below the band's edge
  for (unsigned seed = 0; seed < 6; ++seed) {
    const auto curve = open_curve(winding_points(seed, 4), seed % 2 == 0);
    const RuledFace face(curve, {{2, 9, 30}, {-3, 4, 70}, {0, -8, 40}, {1, 12, 60}}, 5);
    for (const DepthBand band : {DepthBand{0, 1e9}, DepthBand{5, 50}})
      for (std::size_t span = 0; span < 3; ++span) {
        const SpanPart part{span, 0.2 * curve->chord_mm(span), curve->chord_mm(span)};
        const EnclosedSpace space(face, face, band);
        const auto meshed = [&](int steps) {
          std::vector<std::vector<Point3>> rows;
          for (int i = 0; i <= steps; ++i) {
            const Place place{span,
                              part.from_u + (part.to_u - part.from_u) * i / steps};
            const DepthBand here = space.band(place);
            rows.emplace_back();
            for (int j = 0; j <= 8; ++j)
              rows.back().push_back(
                  face.at(place, here.from_mm + (here.to_mm - here.from_mm) * j / 8)
                      .point);
          }
          return sheet_area_mm2(rows);
        };
        BOOST_TEST(area_mm2(face, part, band) == richardson(meshed, 200),
                   tolerance(5e-6));
      }
  }
}

BOOST_AUTO_TEST_CASE(a_function_is_weighed_by_area) {
  // derived: on a flat face 300 by 40 the mean of depth is 20 and that of u is 150; in
  // space the face leans 3-4-5, so its area is 300 * 50
  const auto curve = open_curve({{0, 0, 0}, {300, 0, 0}}, true);
  const RuledFace face = even_face(curve, {0, 30, 40});
  const EnclosedSpace space(face, face, {0, 1e9});
  const SpanPart part{0, 0, 300};
  BOOST_TEST(face_integral(face, part, space,
                           [](Place place, double depth) {
                             return place.u_mm * depth;
                           }) == 300. * 50 * 20 * 150,
             tolerance(1e-13));
}

BOOST_AUTO_TEST_CASE(a_mitre_adds_what_the_carried_on_face_covers) {
  // derived: a box's corner, each face carried on by its offset b(d): over the depth
  // the mean is 5, on both sides 2 * 5 * 50 for an upright face
  const auto curve =
      polygon({{0, -600, 0}, {0, 600, 0}, {2000, 600, 0}, {2000, -600, 0}});
  const RuledFace upright = even_face(curve, {5, 5, 50});
  const EnclosedSpace space(upright, upright, {0, 1e9});
  const auto one = [](Place, double) { return 1.0; };
  BOOST_TEST(mitre_integral(upright, 1, space, one).value() == 500, tolerance(1e-13));
  const RuledFace inboard = even_face(curve, {-5, -5, 50});
  BOOST_TEST(mitre_integral(inboard, 1, space, one).value() == -500, tolerance(1e-13));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "geometry/fold.h"

#include <boost/test/unit_test.hpp>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(fold)

BOOST_AUTO_TEST_CASE(a_face_folds_where_it_is_offset_beyond_the_radius) {
  // derived: the radius at the tip of an ellipse is b^2/a = 160^2/1280 = 20 mm, at the
  // first point and at the middle one
  const auto curve = closed_curve(ellipse_points(1280, 160, 1200));
  const auto found = folds(even_face(curve, {-5, -20.5, 50}));
  BOOST_TEST_REQUIRE(!found.empty());
  BOOST_TEST(found.front().span == 0u);
  BOOST_TEST(found.back().span == 1199u);
  for (const Fold& fold : found) {
    BOOST_TEST(fold.offset_mm == -20.5, tolerance(1e-12));
    BOOST_TEST(fold.radius_mm < 20.5);
    BOOST_TEST(fold.radius_mm > 19.9);
  }
  BOOST_TEST(folds(even_face(curve, {-5, -19.5, 50})).empty());
  BOOST_TEST(folds(even_face(curve, {20.5, 20.5, 50})).empty());  // on the outside
}

BOOST_AUTO_TEST_CASE(a_tight_bend_within_a_span_is_not_missed) {
  // property: the offset just beyond the least radius of 20000 places folds, and just
  // within it does not
  for (unsigned seed = 0; seed < 30; ++seed) {
    const auto curve = open_curve(winding_points(seed, 6));
    double least = 1e300;
    for (std::size_t span = 0; span < curve->spans(); ++span)
      for (int i = 0; i <= 4000; ++i) {
        const PlanFrame frame =
            plan_frame(curve->at({span, curve->chord_mm(span) * i / 4000}));
        if (frame.turn > 0) least = std::min(least, frame.speed / frame.turn);
      }
    BOOST_TEST(folds(even_face(curve, {0, -least * 1.0001, 50})).size() >= 1u);
    BOOST_TEST(folds(even_face(curve, {0, -least * 0.9999, 50})).empty());
  }
}

BOOST_AUTO_TEST_CASE(chords_do_not_fold) {
  const auto curve = polygon(ellipse_points(1280, 160, 60));
  BOOST_TEST(folds(even_face(curve, {-500, -500, 50})).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

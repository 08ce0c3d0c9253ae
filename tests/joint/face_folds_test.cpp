#include "joint/face_folds.h"

#include <boost/test/unit_test.hpp>
#include <memory>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

/// The folds of a face hung 200 mm to the inside of a circle of 100.
Errors folds_of(std::size_t rows, double offset_mm) {
  const auto sheer = sheer_curve(circle_joint(100, rows, {}).sheer);
  BOOST_TEST_REQUIRE(sheer.has_value());
  const std::vector<RuledOffsets> offsets(sheer->knots.size(),
                                          {offset_mm, offset_mm, 50});
  return face_folds(RuledFace(sheer->curve, offsets, 0), *sheer, "the lip face");
}

BOOST_AUTO_TEST_SUITE(face_folds_suite)

BOOST_AUTO_TEST_CASE(a_half_boats_folds_are_named_once) {
  // derived: 11 rows of the half circle have 10 spans, as many again on the other side
  BOOST_TEST(folds_of(11, -200).size() == 10u);
  BOOST_TEST(folds_of(11, -50).size() == 0u);
}

BOOST_AUTO_TEST_CASE(folds_beyond_twenty_are_counted) {
  // derived: 40 spans, 20 of them named
  const Errors errors = folds_of(41, -200);
  BOOST_TEST_REQUIRE(errors.size() == 21u);
  BOOST_TEST(errors.back().message ==
             "the lip face folds after 20 more rows: mend those above first");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

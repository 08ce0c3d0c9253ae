#include "joint/sheets/drawing_profile.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(drawing_profile)

BOOST_AUTO_TEST_CASE(a_joint_reaches_as_far_as_its_sheer_and_its_lips_low_edge) {
  ExampleFaces faces;
  faces.lip_top = faces.lip_low = 3;
  const Extent extent = extent_of(perimeter_of(box_joint(4000, 2000, faces)));
  // derived: a box of 4000 by 2000, its lip 3 and 5 mm further out, 50 mm deep
  BOOST_TEST(std::abs(extent.sheer_most.x() - extent.sheer_least.x() - 4000) < 0.01);
  BOOST_TEST(std::abs(extent.sheer_most.y() - extent.sheer_least.y() - 2000) < 0.01);
  BOOST_TEST(std::abs(extent.height_mm() - 50) < 0.01);
  BOOST_TEST(extent.beam_mm() >= 2000 + 2 * 8 - 0.01);
}

BOOST_AUTO_TEST_CASE(a_circle_is_broadest_in_its_middle) {
  const Extent extent = extent_of(perimeter_of(circle_joint(1000, 41, {})));
  BOOST_TEST(std::abs(extent.broadest_x - 1000) < 30);  // points some 20 mm apart
  BOOST_TEST(std::abs(extent.sheer_most.y() - 1000) < 0.1);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

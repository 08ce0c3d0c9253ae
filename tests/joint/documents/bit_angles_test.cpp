#include "joint/documents/bit_angles.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(bit_angles_suite)

BOOST_AUTO_TEST_CASE(tilt_is_from_level_and_skew_from_square_to_the_side) {
  const double half = std::numbers::sqrt2 / 2;
  const double two = 2 * std::numbers::pi / 180;
  const struct {
    SideName side;
    Vector3 axis;
    double tilt, skew;  // degrees
    const char* source;
  } rows[] = {
      {SideName::Starboard, {0, -1, 0}, 0, 0, "derived: straight across, level"},
      {SideName::Port, {0, 1, 0}, 0, 0, "derived: straight across, level"},
      {SideName::Transom, {-1, 0, 0}, 0, 0, "derived: straight forward, level"},
      {SideName::Starboard,
       {0, -std::cos(two), -std::sin(two)},
       -2,
       0,
       "derived: drops 2 degrees"},
      {SideName::Starboard, {half, -half, 0}, 0, 45, "derived: leads aft by 45"},
      {SideName::Port, {half, half, 0}, 0, 45, "property: port mirrors starboard"},
      {SideName::Starboard, {1, 0, 0}, 0, 90, "derived: at the stem, straight aft"},
      {SideName::Transom, {-half, half, 0}, 0, 45, "derived: leads to starboard"},
      {SideName::Transom, {-half, -half, 0}, 0, -45, "derived: leads to port"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const BitAngles angles = bit_angles(row.side, row.axis);
      // rounding only
      BOOST_TEST(std::abs(angles.tilt.in_degrees() - row.tilt) < 1e-12);
      BOOST_TEST(std::abs(angles.skew.in_degrees() - row.skew) < 1e-12);
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

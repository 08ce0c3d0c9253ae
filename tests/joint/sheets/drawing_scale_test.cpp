#include "joint/sheets/drawing_scale.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

constexpr LengthUnit mm = LengthUnit::Millimetres;
constexpr LengthUnit inches = LengthUnit::Inches;

/// The scale of something so long, in a room so wide (mm).
std::string scale_of(LengthUnit unit, double boat_mm, double room_mm) {
  return largest_scale(unit, [&](double factor) { return boat_mm * factor <= room_mm; })
      .words(unit);
}

BOOST_AUTO_TEST_SUITE(drawing_scale)

BOOST_AUTO_TEST_CASE(the_largest_scale_of_the_series_that_fits_is_taken) {
  // derived: room over length, down to the next of the series
  BOOST_TEST(scale_of(mm, 6395, 340) == "1:20");  // 1:18.8
  BOOST_TEST(scale_of(mm, 6800, 340) == "1:20");  // 1:20 itself
  BOOST_TEST(scale_of(mm, 6801, 340) == "1:25");
  BOOST_TEST(scale_of(mm, 50, 130) == "2:1");  // 2.6:1
  BOOST_TEST(scale_of(mm, 50, 50) == "1:1");
  BOOST_TEST(scale_of(inches, 6395, 340) == "1:24 (1/2 in = 1 ft)");
  BOOST_TEST(scale_of(inches, 6395, 6395. / 48) == "1:48 (1/4 in = 1 ft)");
  BOOST_TEST(scale_of(inches, 50, 110) == "2:1");
}

BOOST_AUTO_TEST_CASE(where_none_fits_the_smallest_is_taken) {
  BOOST_TEST(scale_of(mm, 1e9, 1) == "1:500");
}

BOOST_AUTO_TEST_CASE(a_view_puts_up_upwards_and_mirrors_where_it_is_asked_to) {
  const View view{{100, 200}, 0.05, 0.2};
  // derived: 100 + 400 x 0.05, and 200 - 50 x 0.2
  BOOST_TEST((view.on_sheet({400, 50}) == Point2(120, 190)));
  const View mirrored{{100, 200}, -0.05, 0.2};
  BOOST_TEST((mirrored.on_sheet({400, 50}) == Point2(80, 190)));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

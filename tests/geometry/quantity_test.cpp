#include "geometry/quantity.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(quantity)

BOOST_AUTO_TEST_CASE(an_inch_is_25_4_mm_exactly) {
  // published: ISO 31-1, annex: 1 in = 25,4 mm exactly
  BOOST_TEST(Length::inches(1).in_mm() == 25.4);
  BOOST_TEST(Length::mm(25.4).in_inches() == 1.0);
}

BOOST_AUTO_TEST_CASE(the_ratio_of_two_lengths_is_a_plain_number) {
  BOOST_TEST((Length::mm(900) / Length::mm(150)) == 6.0);
}

BOOST_AUTO_TEST_CASE(like_quantities_add_and_scale_without_leaving_their_unit) {
  // derived: 2 x 25.4 - 0.8 = 50, and so on
  BOOST_TEST((2 * Length::inches(1) - Length::mm(0.8)).in_mm() == 50.0);
  BOOST_TEST((Length::mm(3) + Length::mm(4)).in_mm() == 7.0);
  BOOST_TEST((-Length::mm(3) / 2).in_mm() == -1.5);
  BOOST_TEST((Volume::ml(430) * 3).in_ml() == 1290.0);
}

BOOST_AUTO_TEST_CASE(a_millilitre_is_a_thousand_cubic_millimetres) {
  BOOST_TEST(Volume::mm3(2500).in_ml() == 2.5);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

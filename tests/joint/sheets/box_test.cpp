#include "joint/sheets/box.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(box)

BOOST_AUTO_TEST_CASE(boxes_that_only_touch_do_not_overlap) {
  const Box one{10, 10, 20, 5};
  BOOST_TEST(!one.overlaps({30, 10, 5, 5}));
  BOOST_TEST(!one.overlaps({10, 15, 20, 5}));
  BOOST_TEST(one.overlaps({29.9, 14.9, 5, 5}));
  BOOST_TEST(one.overlaps({0, 0, 100, 100}));
}

BOOST_AUTO_TEST_CASE(an_inset_box_keeps_its_centre) {
  const Box one{10, 20, 30, 8};
  BOOST_TEST((one.inset(2).centre() == one.centre()));
  BOOST_TEST(one.inset(2).width == 26);
  BOOST_TEST(one.inset(-1).bottom() == 29);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

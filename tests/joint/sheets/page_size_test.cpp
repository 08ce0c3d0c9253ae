#include "joint/sheets/page_size.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(page_size)

BOOST_AUTO_TEST_CASE(sheets_have_the_sizes_of_their_standard) {
  const struct {
    PageSize size;
    double width, height;  // mm
    const char* source;
  } rows[] = {
      {small_page(Paper::A4), 210, 297, "ISO 216: A4 is 210 x 297 mm"},
      {drawing_page(Paper::A4), 420, 297, "ISO 216: A3 is 297 x 420 mm"},
      {small_page(Paper::Letter), 215.9, 279.4, "derived: 8.5 x 11 in of 25.4 mm"},
      {drawing_page(Paper::Letter), 431.8, 279.4, "derived: 17 x 11 in of 25.4 mm"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      // an inch size is a product: rounding only
      BOOST_TEST(row.size.width_mm == row.width, boost::test_tools::tolerance(1e-12));
      BOOST_TEST(row.size.height_mm == row.height, boost::test_tools::tolerance(1e-12));
    }
}

BOOST_AUTO_TEST_CASE(a_turned_sheet_is_as_wide_as_it_was_high) {
  const PageSize turned = small_page(Paper::A4).turned();
  BOOST_TEST(turned.width_mm == 297);  // property
  BOOST_TEST(turned.height_mm == 210);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/sheets/short_text.h"

#include <boost/test/unit_test.hpp>

#include "joint/documents/text_table.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(short_text_suite)

BOOST_AUTO_TEST_CASE(text_that_fits_is_left_as_it_is) {
  BOOST_TEST(short_text("", 1) == "");
  BOOST_TEST(short_text("bow cleat", 9) == "bow cleat");
  BOOST_TEST(short_text("\xC3\xA4\xC3\xA4", 2) == "\xC3\xA4\xC3\xA4");
}

BOOST_AUTO_TEST_CASE(longer_text_is_cut_between_characters_and_its_end_is_shown) {
  BOOST_TEST(short_text("bow cleat", 8) == "bow cle\xE2\x80\xA6");
  BOOST_TEST(short_text("\xC3\xA4\xC3\xB6\xC3\xBC", 2) == "\xC3\xA4\xE2\x80\xA6");
  BOOST_TEST(short_text("ab", 1) == "\xE2\x80\xA6");
  BOOST_TEST(width_of(short_text(std::string(1000, 'x'), 20)) == 20U);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/quoted_text.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(quoting_text)

BOOST_AUTO_TEST_CASE(text_is_shown_as_it_was_written) {
  BOOST_TEST(quoted_text("5 mm") == "\"5 mm\"");
  BOOST_TEST(quoted_text("") == "\"\"");
}

BOOST_AUTO_TEST_CASE(control_characters_are_shown_by_their_codes) {
  BOOST_TEST(quoted_text("a\nb\x7f") == "\"a\\x0ab\\x7f\"");
}

BOOST_AUTO_TEST_CASE(text_is_cut_after_forty_characters_and_never_inside_one) {
  std::string forty;
  for (int i = 0; i < 40; ++i) forty += "\u00e9";
  BOOST_TEST(quoted_text(forty) == "\"" + forty + "\"");
  BOOST_TEST(quoted_text(forty + "\u00e9") == "\"" + forty + "...\"");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

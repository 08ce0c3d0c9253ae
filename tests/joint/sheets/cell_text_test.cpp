#include "joint/sheets/cell_text.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(cell_text_suite)

BOOST_AUTO_TEST_CASE(what_xml_refuses_does_not_reach_a_cell) {
  // published: Extensible Markup Language (XML) 1.0, production [2] Char: of the
  // control characters only tab, line feed and carriage return; not U+FFFE and U+FFFF
  const struct {
    const char* text;
    const char* safe;
  } rows[] = {{"a\x01z", "a z"},         {"a\tz", "a z"},
              {"a\xEF\xBF\xBEz", "a?z"}, {"\xEF\xBF\xBF\xEF\xBF\xBF", "??"},
              {"a\xFFz", "a?z"},         {"\xEF\xBF\xBD kept", "\xEF\xBF\xBD kept"},
              {"=1+1", "=1+1"}};
  for (const auto& row : rows) BOOST_TEST(cell_text(row.text) == row.safe);
}

BOOST_AUTO_TEST_CASE(a_long_text_is_cut_between_characters) {
  // derived: e with an acute accent takes two bytes of UTF-8
  BOOST_TEST(cell_text("\xC3\xA9\xC3\xA9\xC3\xA9", 2) == "\xC3\xA9\xC3\xA9...");
  BOOST_TEST(cell_text("\xC3\xA9\xC3\xA9", 2) == "\xC3\xA9\xC3\xA9");
}

BOOST_AUTO_TEST_CASE(an_ampersand_starts_no_code_in_a_margin) {
  BOOST_TEST(margin_text("Hull & deck &P") == "Hull && deck &&P");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

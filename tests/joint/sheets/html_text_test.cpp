#include "joint/sheets/html_text.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(html_text_suite)

BOOST_AUTO_TEST_CASE(what_html_reads_as_markup_stands_as_references) {
  // published: HTML Living Standard, 13.1.2.3 and 13.1.4: < and & in text; the quotes
  // in attributes
  BOOST_TEST(html_text("</script><b>") == "&lt;/script&gt;&lt;b&gt;");
  BOOST_TEST(html_text("a & b &amp; c") == "a &amp; b &amp;amp; c");
  BOOST_TEST(html_text("\" onload='x'") == "&quot; onload=&#39;x&#39;");
}

BOOST_AUTO_TEST_CASE(other_text_stays_and_bytes_that_are_no_text_are_marked) {
  BOOST_TEST(html_text("Jolle \xC3\xA4\xE2\x80\x93 7") ==
             "Jolle \xC3\xA4\xE2\x80\x93 7");
  BOOST_TEST(html_text("a\xFF\tb") == "a? b");
}

BOOST_AUTO_TEST_CASE(a_string_of_a_style_sheet_ends_only_where_it_is_to) {
  // published: CSS Syntax Module Level 3, 4.3.7: a backslash, hexadecimal digits and
  // one blank are one character
  BOOST_TEST(css_string("Demo 640") == "\"Demo 640\"");
  BOOST_TEST(css_string("a\"}</style>\\") ==
             "\"a\\22 \\7d \\3c \\2f style\\3e \\5c \"");
  BOOST_TEST(css_string("\xC3\xA4\n") == "\"\xC3\xA4 \"");
}

BOOST_AUTO_TEST_CASE(json_in_a_script_cannot_end_the_script) {
  const Json value{{"title", "</script><!--"}, {"list", {1, 2.5}}};
  const std::string text = script_json(value);
  // derived: the element ends at "</", and "<!--" changes how it is read
  BOOST_TEST(text == "{\"title\":\"\\u003c/script>\\u003c!--\",\"list\":[1,2.5]}");
  BOOST_TEST(Json::parse(text) == value);  // property: round trip
}

BOOST_AUTO_TEST_CASE(json_of_text_that_is_not_utf_8_is_still_json) {
  const std::string text = script_json(Json{{"title", "a\xFF"}});
  BOOST_TEST(Json::parse(text)["title"] == "a\xEF\xBF\xBD");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

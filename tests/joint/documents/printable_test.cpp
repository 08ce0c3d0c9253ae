#include "joint/documents/printable.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(printable_text)

BOOST_AUTO_TEST_CASE(only_text_that_steers_nothing_is_printed) {
  const struct {
    std::string text, shown;
    const char* source;
  } rows[] = {
      {"bow cleat", "bow cleat", "property: plain text is left as it is"},
      {"n\xC3\xA9", "n\xC3\xA9", "published: RFC 3629, 3: two bytes"},
      {"\xE2\x82\xAC", "\xE2\x82\xAC", "published: RFC 3629, 3: three bytes"},
      {"\xF0\x9F\x9A\xA4", "\xF0\x9F\x9A\xA4", "published: RFC 3629, 3: four bytes"},
      {"a\nb\tc", "a b c", "line ends and tabs"},
      {"\x1B[31mred", " [31mred", "escape"},
      {"a\x7F", "a ", "delete"},
      {"\xC2\x9B"
       "1m",
       " 1m", "C1 control: U+009B is the one-character escape"},
      {"\xC0\x80", "??", "published: RFC 3629, 3: C0 starts no character"},
      {"\xE0\x80\xAF", "???", "published: RFC 3629, 10: overlong"},
      {"\xED\xA0\x80", "???", "published: RFC 3629, 3: surrogate"},
      {"\xF4\x90\x80\x80", "????", "published: RFC 3629, 4: above U+10FFFF"},
      {"\xE2\x82", "??", "cut off"},
      {"a\xEF\xBF\xBEz", "a?z", "published: Unicode, 23.7: U+FFFE is none"},
      {"\xEF\xBF\xBF", "?", "published: Unicode, 23.7: U+FFFF is none"},
      {"\xEF\xB7\x90\xEF\xB7\xAF", "??", "published: Unicode, 23.7: FDD0, FDEF"},
      {"\xEF\xB7\x8F\xEF\xB7\xB0", "\xEF\xB7\x8F\xEF\xB7\xB0",
       "derived: the ones beside them"},
      {"\xF0\x9F\xBF\xBE", "?", "published: Unicode, 23.7: U+1FFFE is none"},
      {"\xF4\x8F\xBF\xBF", "?", "published: Unicode, 23.7: U+10FFFF is none"},
      {"\xF0\x9F\xBF\xBD", "\xF0\x9F\xBF\xBD", "derived: the one before"},
      {"\xEF\xBF\xBD", "\xEF\xBF\xBD", "derived: U+FFFD is a character"},
      {"\xFFx", "?x", "published: RFC 3629, 3: FF never appears"},
  };
  for (const auto& row : rows)
    BOOST_TEST_CONTEXT(row.source) BOOST_TEST(printable(row.text) == row.shown);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

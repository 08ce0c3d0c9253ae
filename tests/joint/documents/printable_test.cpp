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
      {"\xFFx", "?x", "published: RFC 3629, 3: FF never appears"},
  };
  for (const auto& row : rows)
    BOOST_TEST_CONTEXT(row.source) BOOST_TEST(printable(row.text) == row.shown);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

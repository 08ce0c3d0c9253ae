#include "joint/documents/formula_lines.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

/// The formula as it was before it was broken: a blank goes where a sum was broken.
std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) {
    const bool at_product = line.starts_with("*") || line.starts_with("/");
    text += (text.empty() || at_product ? "" : " ") + line;
  }
  return text;
}

using Lines = std::vector<std::string>;

BOOST_AUTO_TEST_SUITE(formula_lines_suite)

BOOST_AUTO_TEST_CASE(a_formula_that_fits_stays_on_its_line) {
  BOOST_TEST((formula_lines("a + b", 5) == Lines{"a + b"}));
}

BOOST_AUTO_TEST_CASE(a_line_is_broken_before_its_sign) {
  BOOST_TEST((formula_lines("aaaa + bbbb", 8) == Lines{"aaaa", "+ bbbb"}));
  BOOST_TEST((formula_lines("aaaa*bbbb", 8) == Lines{"aaaa", "*bbbb"}));
}

BOOST_AUTO_TEST_CASE(a_line_is_broken_outside_of_brackets_where_it_can_be) {
  // the last sign that fits is within brackets
  BOOST_TEST((formula_lines("aaaa*bbbb + (ccc + ddd)", 16) ==
              Lines{"aaaa*bbbb", "+ (ccc + ddd)"}));
}

BOOST_AUTO_TEST_CASE(the_sign_of_an_exponent_is_no_place_to_break) {
  BOOST_TEST((formula_lines("1.23456e-05*bbbb", 12) == Lines{"1.23456e-05", "*bbbb"}));
}

BOOST_AUTO_TEST_CASE(broken_lines_put_together_are_the_formula) {
  const std::string formula =
      "min((coth(lam*w) + (eta_low - eta_top)/(4*lam*w*eta_top)*(1 + "
      "(lam*w*csch(lam*w))^2))/lam, coth(lam_c*w)/lam_c)";
  for (const std::size_t width : {20, 30, 40, 60}) {
    const auto lines = formula_lines(formula, width);
    BOOST_TEST(joined(lines) == formula);
    BOOST_TEST(lines.size() > 1);
    for (const std::string& line : lines) BOOST_TEST(line.size() <= width, line);
  }
}

BOOST_AUTO_TEST_CASE(what_cannot_be_broken_stays_whole) {
  BOOST_TEST((formula_lines("abcdefgh", 4) == Lines{"abcdefgh"}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

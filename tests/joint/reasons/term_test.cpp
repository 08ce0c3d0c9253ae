#include "joint/reasons/term.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(term_test)

const Term a = Term::named("a", 2), b = Term::named("b", 3), c = Term::named("c", 5);

BOOST_AUTO_TEST_CASE(brackets_stand_where_the_order_of_working_asks_for_them) {
  const struct {
    Term term;
    const char *letters, *numbers;
    double value;  // derived: by hand
  } rows[] = {
      {a + b * c, "a + b*c", "2 + 3*5", 17},
      {(a + b) * c, "(a + b)*c", "(2 + 3)*5", 25},
      {a - (b - c), "a - (b - c)", "2 - (3 - 5)", 4},
      {a - b - c, "a - b - c", "2 - 3 - 5", -6},
      {a / (b * c), "a/(b*c)", "2/(3*5)", 2. / 15},
      {a / b * c, "a/b*c", "2/3*5", 2. / 3 * 5},
      {a / (b / c), "a/(b/c)", "2/(3/5)", 10. / 3},
      {-(a + b), "-(a + b)", "-(2 + 3)", -5},
      {a * -b, "a*(-b)", "2*(-3)", -6},
      {power(a + b, 2), "(a + b)^2", "(2 + 3)^2", 25},
      {power(a, -0.5), "a^(-0.5)", "2^(-0.5)", std::sqrt(0.5)},
      {power(power(a, 2), 3), "(a^2)^3", "(2^2)^3", 64},
      {-power(a, 2), "-a^2", "-2^2", -4},
      {2 * a, "2*a", "2*2", 4},
      {a * -2, "a*(-2)", "2*(-2)", -4},
      {sqrt(a * b), "sqrt(a*b)", "sqrt(2*3)", std::sqrt(6)},
      {max(a, b + c), "max(a, b + c)", "max(2, 3 + 5)", 8},
      {exp2((a - b) / 2), "2^((a - b)/2)", "2^((2 - 3)/2)", std::sqrt(0.5)},
      {tan(a), "tan(a)", "tan(2)", std::sin(2) / std::cos(2)},
      {round(c / a), "round(c/a)", "round(5/2)", 3},
      {log(a * b), "ln(a*b)", "ln(2*3)", std::log(6)},
      {coth(a) - csch(a), "coth(a) - csch(a)", "coth(2) - csch(2)", std::tanh(1)},
  };
  for (const auto& row : rows) {
    BOOST_TEST(row.term.letters() == row.letters);
    BOOST_TEST(row.term.numbers() == row.numbers);
    BOOST_TEST(row.term.value() == row.value, boost::test_tools::tolerance(1e-15));
  }
}

BOOST_AUTO_TEST_CASE(a_negative_quantity_is_put_in_with_brackets) {
  const Term d = Term::named("d", -4);
  BOOST_TEST((a - d).numbers() == "2 - (-4)");
  BOOST_TEST(power(d, 2).numbers() == "(-4)^2");
}

BOOST_AUTO_TEST_CASE(hyperbolic_functions_stay_finite_for_long_bonds) {
  // property: limits; sinh and cosh overflow near 710
  BOOST_TEST(coth(1e6) == 1);
  BOOST_TEST(sech(1e6) == 0);
  BOOST_TEST(csch(1e6) == 0);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

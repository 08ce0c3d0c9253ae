#include "joint/documents/explain_text.h"

#include <boost/test/unit_test.hpp>
#include <sstream>

#include "joint/documents/text_table.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

std::string words_of(const std::string& address) {
  return "yours: joint.toml:31 " + address;
}

Explanation area() {
  WrittenWorking work;
  const Term d = work.given({"d", "diameter", "mm"}, 4.8, Origin::of_joint("a table"));
  const Term k =
      work.given({"k", "share left", "1"}, 0.9, Origin::of_file("strength.wet"));
  const Term E =
      work.given({"E", "modulus", "N/mm2"}, 8000, Origin::of_file("lip.modulus"));
  const Term A =
      work.figure({"A", "area", "mm2", "derived: a disc", "round"}, 0.785 * d * d * k);
  work.figure({"EA", "stiffness", "N", "derived: a disc", "round"}, E * A);
  return {"strength.area", "how stiff it is", work.release()};
}

Explanation root() {
  WrittenWorking work;
  const Term a = work.given({"a", "a number", "1"}, 2, Origin::of_joint("a table"));
  work.solved({"x", "its root", "mm", "derived", "above 0"}, 1.41421356,
              [&](const auto& x) {
                using Number = std::decay_t<decltype(x)>;
                return Equation<Number>{x * x, a};
              });
  return {"strength.root", "a root", work.release()};
}

Joint joint_with_default() {
  Joint joint;
  joint.defaults = {{"strength.wet", "0.9", "seen for another laminate"}};
  return joint;
}

std::string text_of_all(const Explanations& all) {
  return explain_text(all, joint_with_default(), words_of);
}

BOOST_AUTO_TEST_SUITE(explain_text_suite)

BOOST_AUTO_TEST_CASE(a_figure_stands_in_letters_in_numbers_and_as_a_value) {
  const std::string text = text_of_all({area()});
  // derived: 0.785 4.8^2 0.9 = 16.2778, times 8000 = 130222
  BOOST_TEST(holds(text,
                   "\n    A = 0.785*d*d*k\n      = 0.785*4.8*4.8*0.9\n"
                   "      = 16.2778 mm2\n        area\n"
                   "        source: derived: a disc\n        valid for: round\n"));
  BOOST_TEST(holds(text, "    EA = E*A\n       = 8000*16.2778\n       = 130222 N\n"));
}

BOOST_AUTO_TEST_CASE(a_number_that_was_given_says_where_it_is_from) {
  const std::string text = text_of_all({area()});
  BOOST_TEST(holds(text, "diameter [a table]"));
  BOOST_TEST(holds(text, "modulus [yours: joint.toml:31 lip.modulus]"));
  BOOST_TEST(holds(text, "share left [default: seen for another laminate]"));
}

BOOST_AUTO_TEST_CASE(a_source_is_said_once_in_a_block) {
  BOOST_TEST(holds(text_of_all({area()}), "source and validity: as for A\n"));
}

BOOST_AUTO_TEST_CASE(a_figure_worked_in_an_earlier_block_is_not_worked_again) {
  const std::string text = text_of_all({area(), area()});
  BOOST_TEST(holds(text, "A = 16.2778 mm2, worked in R1\n"));
  BOOST_TEST(text.find("0.785*d*d*k") == text.rfind("0.785*d*d*k"));
}

BOOST_AUTO_TEST_CASE(an_equation_that_was_solved_stands_below_its_root) {
  BOOST_TEST(holds(text_of_all({root()}),
                   "    x = 1.41421 mm\n    such that x*x = a\n"
                   "         that is 1.41421*1.41421 = 2\n"));
}

BOOST_AUTO_TEST_CASE(each_block_says_its_place_in_the_result) {
  const std::string text = text_of_all({area(), root()});
  BOOST_TEST(holds(text, "R1: how stiff it is\n    in the result: strength.area\n"));
  BOOST_TEST(holds(text, "R2: a root\n    in the result: strength.root\n"));
}

BOOST_AUTO_TEST_CASE(long_formulas_keep_to_80_characters) {
  WrittenWorking work;
  Term sum = work.given({"a_number", "a number", "1"}, 1.23456, Origin::of_joint("x"));
  for (int i = 0; i < 6; ++i) sum = sqrt(sum * sum + sum / (1 + sum));
  work.figure({"long_sum", "a long one", "1", "derived: nothing", "any"}, sum);
  std::istringstream stream(text_of_all({{"x", "y", work.release()}}));
  for (std::string line; std::getline(stream, line);)
    BOOST_TEST(width_of(line) <= 80, line);
}

BOOST_AUTO_TEST_CASE(without_explanations_there_is_nothing) {
  BOOST_TEST(text_of_all({}).empty());
}

BOOST_AUTO_TEST_CASE(an_address_without_a_file_is_told_itself) {
  BOOST_TEST(origin_text(Origin::of_file("lip.modulus"), {}, {}) ==
             "yours: lip.modulus");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

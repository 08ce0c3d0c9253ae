#include "joint/documents/check_text.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

const NumberStyle in_mm(LengthUnit::Millimetres, Length::mm(1));
const NumberStyle in_inches(LengthUnit::Inches, Length::mm(1));

Check check_of(CheckState state, double value = 1, double limit = 2) {
  return {"fit.gap_min", "least gap", value, limit, "mm", state, "the data sheet"};
}

BOOST_AUTO_TEST_SUITE(check_text)

BOOST_AUTO_TEST_CASE(the_verdict_is_that_of_the_worst_check) {
  const Check pass = check_of(CheckState::Pass);
  const Check warn = check_of(CheckState::Warn);
  const Check fail = check_of(CheckState::Fail);
  BOOST_TEST(verdict_line({}) == "GO ON: nothing was found wrong.");
  BOOST_TEST(verdict_line({pass}) == "GO ON: 1 check with nothing found wrong.");
  BOOST_TEST(verdict_line({pass, warn}) ==
             "LOOK FIRST: none of 2 checks fails, 1 warns; see the list.");
  BOOST_TEST(
      verdict_line({pass, warn, fail}) ==
      "STOP: 1 of 3 checks fails, 1 warns; see the list before you cut or drill.");
  BOOST_TEST(verdict_line({fail, fail}) ==
             "STOP: 2 of 2 checks fail; see the list before you cut or drill.");
}

BOOST_AUTO_TEST_CASE(a_check_in_a_sentence_says_value_limit_and_source) {
  BOOST_TEST(check_sentence(check_of(CheckState::Warn, 3), in_mm) ==
             "Least gap: 3 mm against 2 mm (the data sheet)");
  BOOST_TEST(check_sentence(check_of(CheckState::Pass, 25.4, 12.7), in_inches) ==
             "Least gap: 1 in against 0.5 in (the data sheet)");
}

BOOST_AUTO_TEST_CASE(failed_checks_are_listed_before_warned_ones_and_passed_ones_not) {
  const Checks checks{check_of(CheckState::Warn, 3), check_of(CheckState::Pass, 4),
                      check_of(CheckState::Fail, 5)};
  BOOST_TEST(check_list(checks, in_mm) ==
             "Checks that fail or warn\n"
             "FAIL fit.gap_min: Least gap: 5 mm against 2 mm (the data sheet)\n"
             "WARN fit.gap_min: Least gap: 3 mm against 2 mm (the data sheet)\n");
  BOOST_TEST(check_list({check_of(CheckState::Pass)}, in_mm).empty());
}

BOOST_AUTO_TEST_CASE(a_value_never_looks_the_same_as_the_limit_it_misses) {
  BOOST_TEST(check_list({check_of(CheckState::Fail, 0.99996, 1)}, in_mm)
                 .find("0.99996 mm against 1 mm") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_check_in_inches_has_no_millimetres) {
  const std::string text =
      check_list({check_of(CheckState::Fail, 12.7, 25.4)}, in_inches);
  // derived: 12.7 mm = 0.5 in
  BOOST_TEST(text.find("0.5 in against 1 in") != std::string::npos);
  BOOST_TEST(text.find("mm") == std::string::npos);
  Check area = check_of(CheckState::Fail, 1290.32, 645.16);
  area.unit = "mm2";
  // derived: 645.16 mm2 = 25.4 mm x 25.4 mm
  BOOST_TEST(check_list({area}, in_inches).find("2 sq in against 1 sq in") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_check_without_a_limit_stands_without_numbers) {
  Check check = check_of(CheckState::Warn);
  check.limit.reset();
  check.source.clear();
  BOOST_TEST(check_list({check}, in_mm) ==
             "Checks that fail or warn\nWARN fit.gap_min: Least gap\n");
}

BOOST_AUTO_TEST_CASE(defaults_are_listed_with_their_reason) {
  Joint joint;
  BOOST_TEST(default_list(joint, in_mm).empty());
  joint.defaults = {{"jig.bush", "8 mm", "a usual bush"}};
  BOOST_TEST(default_list(joint, in_mm) ==
             "Defaults used, because the joint file does not say\n"
             "key       value  why\n"
             "--------  -----  ------------\n"
             "jig.bush  8 mm   a usual bush\n");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

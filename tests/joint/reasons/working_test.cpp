#include "joint/reasons/working.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(working_test)

template <class Working>
typename Working::Number mean_stress(Working& work) {
  const auto P =
      work.given({"P", "load", "N/mm"}, 100, Origin::of_file("loads.across"));
  const auto l = work.given({"l", "overlap", "mm"}, 40, Origin::of_joint("measured"));
  const auto tau = work.figure(
      {"tau", "mean shear stress", "N/mm2", "derived: load over length", "any"}, P / l);
  return work.solved(
      {"x", "twice the mean, as a root", "N/mm2", "derived: doubling", "any"}, 5,
      [&](const auto& x) {
        return Equation<Term>{x / 2, tau};
      });
}

BOOST_AUTO_TEST_CASE(a_plain_and_a_written_calculation_give_the_same_number) {
  PlainWorking plain;
  WrittenWorking written;
  BOOST_TEST(mean_stress(plain) == mean_stress(written).value());
}

BOOST_AUTO_TEST_CASE(a_written_calculation_keeps_what_was_given_and_what_was_worked) {
  WrittenWorking work;
  mean_stress(work);
  const auto& steps = work.steps();
  BOOST_TEST_REQUIRE(steps.size() == 4U);
  BOOST_TEST(steps[0].is_given());
  BOOST_TEST(steps[0].origin.address == "loads.across");
  BOOST_TEST(steps[1].origin.words == "measured");
  BOOST_TEST(steps[2].formula == "P/l");
  BOOST_TEST(steps[2].numbers == "100/40");
  BOOST_TEST(steps[2].value == 2.5);
  BOOST_TEST(steps[2].source == "derived: load over length");
  BOOST_TEST(steps[3].formula == "such that x/2 = tau");
  BOOST_TEST(steps[3].numbers == "5/2 = 2.5");
}

BOOST_AUTO_TEST_CASE(a_line_that_stands_already_is_not_written_twice) {
  WrittenWorking work;
  mean_stress(work);
  mean_stress(work);
  BOOST_TEST(work.steps().size() == 4U);
}

BOOST_AUTO_TEST_CASE(a_number_that_was_found_says_how_and_how_well) {
  constexpr FoundWords words{
      {"g", "gap", "mm", "derived: along the normal", "as drawn"},
      "the normal followed to the face",
      "1e-9 mm"};
  WrittenWorking work;
  BOOST_TEST((2 * work.found(words, 3)).numbers() == "2*3");
  const Reason& found = work.steps().front();
  BOOST_TEST((found.is_found() && !found.is_given()));
  BOOST_TEST(found.found == "the normal followed to the face");
  BOOST_TEST(found.accuracy == "1e-9 mm");
  BOOST_TEST(found.source == "derived: along the normal");
  BOOST_TEST(PlainWorking().found(words, 3) == 3);
}

BOOST_AUTO_TEST_CASE(a_number_that_is_sought_is_written_once_it_is_solved) {
  WrittenWorking work;
  const Term P = work.sought("P", 6);
  const Term tau = work.figure(
      {"tau", "stress", "N/mm2", "derived: load over length", "any"}, P / 2);
  BOOST_TEST(work.steps().size() == 1U);
  work.solved({"P", "load that strains it", "N/mm", "derived: as asked", "any"}, 6,
              [&](const auto&) {
                return Equation<Term>{tau, Term(3)};
              });
  BOOST_TEST_REQUIRE(work.steps().size() == 2U);
  BOOST_TEST(work.steps()[0].formula == "P/2");
  BOOST_TEST(work.steps()[1].formula == "such that tau = 3");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/mechanics/line_load.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(line_load_test)

template <class Number>
LineLoad<Number> boat() {
  return {7.29830, 0.909091, 2.08973};
}

BOOST_AUTO_TEST_CASE(loads_along_and_across_add_as_the_sides_of_a_right_angle) {
  // derived: sqrt((7.29830 + 0.909091)^2 + 2.08973^2); 788.4/8.46925; 8.46925/50
  PlainWorking work;
  const double r = line_resultant(work, boat<double>());
  BOOST_TEST(r == 8.46925, tolerance(2e-6));
  BOOST_TEST(strength_pitch(work, r, 788.4, 1) == 93.0897, tolerance(2e-6));
  BOOST_TEST(mean_bond_stress(work, r, 50) == 0.169385, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_fastener_at_the_strength_pitch_carries_what_it_may) {
  // property
  PlainWorking work;
  BOOST_TEST(fastener_load(work, 8.4, strength_pitch(work, 8.4, 788.4, 1)) == 788.4,
             tolerance(1e-12));
  BOOST_TEST(
      strength_pitch(work, 8.4, 788.4, 2) == 2 * strength_pitch(work, 8.4, 788.4, 1),
      tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  const Term r = line_resultant(work, boat<Term>());
  const double same = line_resultant(plain, boat<double>());
  BOOST_TEST(r.value() == same);
  BOOST_TEST(fastener_load(work, r, 150).value() == fastener_load(plain, same, 150));
  BOOST_TEST(strength_pitch(work, r, 788.4, 1).value() ==
             strength_pitch(plain, same, 788.4, 1));
  BOOST_TEST(mean_bond_stress(work, r, 50).value() ==
             mean_bond_stress(plain, same, 50));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/mechanics/yield_squeeze.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(yield_squeeze_test)

constexpr Squeeze<double> strip{300, 50, 3, 1};  // Pa s, mm, mm, mm/s

BOOST_AUTO_TEST_CASE(a_paste_that_yields_at_500_pascal_holds_208_newtons_a_metre) {
  // derived: 500 x 0.05^2/(2 x 0.003)
  PlainWorking work;
  BOOST_TEST(yield_force(work, strip, 500) == 0.208333, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(a_bead_stops_where_its_yield_stress_holds_the_clamps) {
  // derived: (500 x 150^2 1e-6/(2 x 1))^(1/3); 500e-6 x 150^2/(2 eta^3)
  PlainWorking work;
  BOOST_TEST(final_gap(work, 150, 500, 1) == 1.77845, tolerance(3e-6));
  BOOST_TEST(holding_force(work, 150, 500, 3) == 0.208333, tolerance(2e-6));
  BOOST_TEST(holding_force(work, 150, 500, 1) == 5.625, tolerance(1e-12));
  // property: the force that holds the final gap is the one that made it
  BOOST_TEST(holding_force(work, 150, 500, final_gap(work, 150, 500, 1.7)) == 1.7,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_bounds_are_viscous_force_and_one_to_one_and_a_half_yields) {
  // derived: 1.38889 + 0.208333 and + 1.5 x 0.208333
  PlainWorking work;
  BOOST_TEST(lowest_squeeze_force(work, strip, 500) == 1.59722, tolerance(3e-6));
  BOOST_TEST(highest_squeeze_force(work, strip, 500) == 1.70139, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  const Squeeze<Term> same{300., 50., 3., 1.};
  BOOST_TEST(lowest_squeeze_force(work, same, 500).value() ==
             lowest_squeeze_force(plain, strip, 500));
  BOOST_TEST(highest_squeeze_force(work, same, 500).value() ==
             highest_squeeze_force(plain, strip, 500));
  BOOST_TEST(final_gap(work, 150, 500, 1).value() == final_gap(plain, 150, 500, 1));
  BOOST_TEST(holding_force(work, 150, 500, 3).value() ==
             holding_force(plain, 150, 500, 3));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

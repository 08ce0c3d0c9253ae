#include "joint/mechanics/lip_bending.h"

#include <boost/test/unit_test.hpp>

#include "joint/mechanics/foundation_row.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(lip_bending_test)

/// A lip 50 high and 5 thick over paste that pushes back with 0.208 N/mm.
template <class Working>
LipSpan<typename Working::Number> lip(Working& work) {
  return {0.208, 8000., lip_inertia(work, 50, 5)};
}

BOOST_AUTO_TEST_CASE(the_lip_bends_by_the_fourth_power_of_the_pitch) {
  const struct {
    double pitch, bend;  // mm; derived: 0.208 s^4/(384 x 8000 x 520.833)
  } rows[] = {{75, 0.00411328},
              {100, 0.0130000},
              {150, 0.0658125},
              {200, 0.208000},
              {300, 1.05300}};
  PlainWorking work;
  for (const auto& row : rows)
    BOOST_TEST(lip_deflection(work, lip(work), row.pitch) == row.bend, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(a_gap_change_of_three_tenths_allows_a_pitch_of_219) {
  // derived: (384 x 8000 x 520.833 x 0.3/0.208)^(1/4)
  PlainWorking work;
  BOOST_TEST(pitch_for_gap_change(work, lip(work), 0.3) == 219.177, tolerance(3e-6));
}

BOOST_AUTO_TEST_CASE(at_the_pitch_for_a_gap_change_the_lip_bends_by_it) {
  // property
  PlainWorking work;
  const double pitch = pitch_for_gap_change(work, lip(work), 0.47);
  BOOST_TEST(lip_deflection(work, lip(work), pitch) == 0.47, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_lip_bends_as_on_the_softest_of_layers) {
  // property: a layer too soft to tell the lip's bends pushes back evenly, f = P/s
  PlainWorking work;
  const double I = lip_inertia(work, 50, 5), s = 150;
  const LoadRow<double> row{{1e-4, 8000, I}, 0.208 * s, s};
  BOOST_TEST(row_deflection_at(work, row) - row_deflection_between(work, row) ==
                 lip_deflection(work, {0.208, 8000, I}, s),
             tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(a_mismatch_over_twice_the_length_takes_an_eighth_of_the_force) {
  // derived: 192 x 8000 x 520.833 x 2/300^3 and /600^3
  PlainWorking work;
  BOOST_TEST(closing_force(work, lip(work), 2, 300) == 59.2593, tolerance(1e-6));
  BOOST_TEST(closing_force(work, lip(work), 2, 600) == 7.40741, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  BOOST_TEST(lip_deflection(work, lip(work), 150).value() ==
             lip_deflection(plain, lip(plain), 150));
  BOOST_TEST(pitch_for_gap_change(work, lip(work), 0.3).value() ==
             pitch_for_gap_change(plain, lip(plain), 0.3));
  BOOST_TEST(closing_force(work, lip(work), 2, 300).value() ==
             closing_force(plain, lip(plain), 2, 300));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

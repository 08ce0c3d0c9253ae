#include "joint/mechanics/bond_energy.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(bond_energy_test)

double example_energy() {
  PlainWorking work;
  return bond_energy(work, YieldingBond<double>{370, 1, 20, 0.50});
}

/// Laminates of 6 and 4 mm.
const ShearLap<double> lap = {370, 1, 48000, 32000, 500};

BOOST_AUTO_TEST_CASE(the_energy_is_the_area_under_the_shear_curve) {
  // derived: 1 * 20 * (20/370/2 + 0.5) = 10.5405
  BOOST_TEST(example_energy() == 10.5405, tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(a_double_lap_fails_at_its_weaker_end) {
  // derived: the formulas of NASA CR-112235 in an independent script
  WrittenWorking work;
  const Term capacity = double_lap_capacity(
      work, {Term::named("Eiti", 64000), Term::named("Eoto", 40000)}, example_energy());
  BOOST_TEST(work.steps()[0].value == 2203.88, tolerance(5e-6));
  BOOST_TEST(work.steps()[1].value == 2754.85, tolerance(5e-6));
  BOOST_TEST(capacity.value() == 2203.88, tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(a_balanced_double_lap_is_alike_at_both_ends) {
  // derived: sqrt(8 U Ei ti)
  PlainWorking work;
  const double U = example_energy();
  const double capacity = double_lap_capacity(work, DoubleLap<double>{80000, 40000}, U);
  BOOST_TEST(capacity == 2597.30, tolerance(5e-6));
  BOOST_TEST(capacity == std::sqrt(8 * U * 80000), tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(one_bond_fails_where_the_stiffer_adherend_ends) {
  // derived: sqrt(2 U E2t2 (1 + E2t2/E1t1)) in an independent script
  PlainWorking work;
  const auto ends = end_capacities(work, lap, {0, 0, 0}, example_energy());
  BOOST_TEST(ends.P_2 == 1060.34, tolerance(5e-6));
  BOOST_TEST(ends.P_1 == 1590.51, tolerance(5e-6));
  BOOST_TEST(energy_capacity(work, lap, ends, 20.) == ends.P_2);
}

BOOST_AUTO_TEST_CASE(a_short_bond_carries_no_more_than_all_of_it_yielding) {
  PlainWorking work;
  ShearLap<double> short_lap = lap;
  short_lap.l = 40;
  const auto ends = end_capacities(work, short_lap, {0, 0, 0}, example_energy());
  BOOST_TEST(energy_capacity(work, short_lap, ends, 20.) == 800);
}

BOOST_AUTO_TEST_CASE(half_a_double_lap_is_one_bond) {
  // property: each bond carries half the load to half the inner adherend
  PlainWorking work;
  const double U = example_energy();
  const auto ends = end_capacities(
      work, ShearLap<double>{370, 1, 40000, 64000 / 2., 500}, {0, 0, 0}, U);
  BOOST_TEST(2 * std::min(ends.P_1, ends.P_2) ==
                 double_lap_capacity(work, DoubleLap<double>{64000, 40000}, U),
             tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(an_elastic_bond_parts_when_its_peak_reaches_its_strength) {
  // property: without plastic strain the energy gives the peak stress of a long lap,
  // with heat and without
  PlainWorking work;
  const double U = bond_energy(work, YieldingBond<double>{370, 1, 20, 0});
  for (const double heat : {0., 2e-4, -2e-4}) {
    const ShearLoad<double> free = {0, 0, heat};
    const auto ends = end_capacities(work, lap, free, U);
    BOOST_TEST(end_1_shear(work, lap, {ends.P_1, 0, heat}) == 20, tolerance(1e-12));
    BOOST_TEST(end_2_shear(work, lap, {ends.P_2, 0, heat}) == 20, tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(both_workings_give_the_same_capacity) {
  PlainWorking work;
  WrittenWorking writing;
  const auto ends = end_capacities(work, lap, {0, 0, 1e-4}, example_energy());
  const ShearLap<Term> words = {Term::named("Ga", lap.Ga), Term::named("eta", lap.eta),
                                Term::named("E1t1", lap.E1t1),
                                Term::named("E2t2", lap.E2t2), Term::named("l", lap.l)};
  const auto U = bond_energy(writing, YieldingBond<Term>{370, 1, 20, 0.50});
  const auto written_ends = end_capacities(
      writing, words, {0, Term::named("e1", 0), Term::named("e2", 1e-4)}, U);
  BOOST_TEST(energy_capacity(writing, words, written_ends, Term(20)).value() ==
             energy_capacity(work, lap, ends, 20.));
  BOOST_TEST(writing.steps().back().formula == "min(min(P_1, P_2), 20*l)");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

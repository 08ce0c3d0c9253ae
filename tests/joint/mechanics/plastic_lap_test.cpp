#include "joint/mechanics/plastic_lap.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/mechanics/example_laps.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A brittle paste in a thin bond.
PlasticLap<double> brittle_lap(double eta = 0.5) {
  return {{1000, 2700, eta, 8000, 5, 0.3, 1, 80, BondStrain::OfFaces},
          25,
          0.05,
          EdgeMoment::Turning};
}

/// A tough paste in a thick bond.
PlasticLap<double> tough_lap() { return {paste_lap(), 10, 0.30, EdgeMoment::Turning}; }

BOOST_AUTO_TEST_SUITE(plastic_lap_test)

BOOST_AUTO_TEST_CASE(a_brittle_bond_fails_at_its_ends) {
  // derived: the same equations in an independent script
  PlainWorking work;
  const double capacity = shear_capacity(work, brittle_lap());
  BOOST_TEST(first_yield(work, brittle_lap()) == 154.159, tolerance(5e-6));
  BOOST_TEST(capacity == 404.324, tolerance(5e-6));
  BOOST_TEST(plastic_length(work, brittle_lap(), capacity) == 2.14196, tolerance(5e-6));
  BOOST_TEST(end_strain(work, brittle_lap(), capacity) == 0.075, tolerance(1e-10));
  BOOST_TEST(
      edge_loads(work, brittle_lap().lap, capacity, EdgeMoment::Turning).k == 0.206814,
      tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(a_tough_bond_yields_all_over) {
  // derived: as above; capacity is 10 N/mm2 over 50 mm
  PlainWorking work;
  BOOST_TEST(first_yield(work, tough_lap()) == 170.529, tolerance(5e-6));
  BOOST_TEST(shear_capacity(work, tough_lap()) == 500);
}

BOOST_AUTO_TEST_CASE(the_sum_grows_nearly_with_the_root_of_the_thickness) {
  const struct {
    double eta, capacity;  // derived: the same equations in an independent script
  } rows[] = {
      {0.25, 272.546}, {0.5, 404.324}, {1, 588.685}, {2, 834.737}, {4, 1137.49}};
  for (const auto& row : rows) {
    PlainWorking work;
    BOOST_TEST(shear_capacity(work, brittle_lap(row.eta)) == row.capacity,
               tolerance(5e-6));
  }
}

BOOST_AUTO_TEST_CASE(yielded_ends_and_elastic_middle_carry_the_load_between_them) {
  // property: equilibrium, 2 tau_p sp + 2 C0 b + 2 (tau_p - C0) tanh(om b)/om = P
  for (const double P : {155., 200., 404., 1000., 1900.}) {
    PlainWorking work;
    const auto bond = brittle_lap();
    const double s_p = plastic_length(work, bond, P), b = bond.lap.l / 2 - s_p;
    const auto terms =
        lap_shear_terms(work, bond.lap, P, edge_loads(work, bond.lap, P, bond.edge).k);
    BOOST_TEST(
        2 * bond.tau_p * s_p + 2 * terms.C0 * b +
                2 * (bond.tau_p - terms.C0) * std::tanh(terms.om * b) / terms.om ==
            P,
        tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(strain_rises_with_the_load_and_without_a_step_at_yield) {
  // property: continuity and order
  PlainWorking work;
  const double yield = first_yield(work, brittle_lap());
  BOOST_TEST(end_strain(work, brittle_lap(), yield * (1 - 1e-9)) == 0.025,
             tolerance(1e-8));
  BOOST_TEST(end_strain(work, brittle_lap(), yield * (1 + 1e-9)) == 0.025,
             tolerance(1e-8));
  double before = 0;
  for (double P = 10; P <= 2000; P += 10) {
    const double strain = end_strain(work, brittle_lap(), P);
    BOOST_TEST(strain > before);
    before = strain;
  }
}

BOOST_AUTO_TEST_CASE(a_bond_without_plastic_strain_fails_at_first_yield) {
  // property: limit
  PlainWorking work;
  auto bond = brittle_lap();
  bond.g_p = 0;
  BOOST_TEST(shear_capacity(work, bond) == first_yield(work, bond), tolerance(1e-10));
}

BOOST_AUTO_TEST_CASE(the_solver_finds_a_capacity_for_every_sane_bond) {
  // property: from first yield to all of it yielding, and the same in both workings
  for (const double l : {1., 50., 1e3, 1e5})
    for (const double eta : {1e-3, 1., 50.})
      for (const double stiffer : {1e-3, 1., 1e3})
        for (const double g_p : {0., 0.05, 3.})
          for (const EdgeMoment edge : {EdgeMoment::Turning, EdgeMoment::Held}) {
            const PlasticLap<double> bond = {
                {370, 1000, eta, 8000 * stiffer, 5, 0.3, 1, l}, 10, g_p, edge};
            PlainWorking work;
            const double yield = first_yield(work, bond),
                         cap = shear_capacity(work, bond);
            BOOST_TEST((yield > 0 && cap >= yield * (1 - 1e-10) && cap <= 10 * l));
            WrittenWorking writing;
            BOOST_TEST(shear_capacity(writing, written(bond)).value() == cap);
          }
}

BOOST_AUTO_TEST_CASE(the_working_ends_with_the_equation_the_capacity_meets) {
  WrittenWorking work;
  shear_capacity(work, written(brittle_lap()));
  const Reason& last = work.steps().back();
  BOOST_TEST(last.letters == "P_cap");
  BOOST_TEST(last.formula == "such that g_0 = tau_p/Ga + g_p");
  BOOST_TEST(last.numbers == "0.075 = 25/1000 + 0.05");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

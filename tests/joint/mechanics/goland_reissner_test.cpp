#include "joint/mechanics/goland_reissner.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/single_lap_field.h"
#include "tests/joint/mechanics/derivatives.h"
#include "tests/joint/mechanics/example_laps.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(goland_reissner_test)

BOOST_AUTO_TEST_CASE(the_stresses_are_those_worked_elsewhere) {
  // derived: the formulas in an independent script, which also met their equations
  PlainWorking work;
  const double k = goland_reissner_factor(work, paste_lap(), 100.);
  BOOST_TEST(k == 0.554503, tolerance(5e-6));
  BOOST_TEST(goland_reissner_shear(work, paste_lap(), 100., k) == 5.90132,
             tolerance(5e-6));
  BOOST_TEST(goland_reissner_peel(work, paste_lap(), 100., k) == 7.16889,
             tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(the_corrected_factor_goes_into_the_same_stresses) {
  // derived: as above, with the factor of NASA CR-112236
  PlainWorking work;
  const double k = edge_loads(work, paste_lap(), 100., EdgeMoment::Turning).k;
  BOOST_TEST(goland_reissner_shear(work, paste_lap(), 100., k) == 5.72991,
             tolerance(5e-6));
  BOOST_TEST(goland_reissner_peel(work, paste_lap(), 100., k) == 6.66456,
             tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(thin_bond_theory_calls_thicker_always_better) {
  const struct {
    double eta, tau, sig;  // derived: the formulas in an independent script
  } rows[] = {{0.5, 13.4766, 16.7019}, {1, 9.72518, 12.0128}, {2, 7.07330, 8.66516},
              {3, 5.90132, 7.16889},   {5, 4.73715, 5.65437}, {10, 3.61099, 4.10660}};
  for (const auto& row : rows) {
    SingleLap<double> lap = paste_lap();
    lap.eta = row.eta;
    PlainWorking work;
    const double k = goland_reissner_factor(work, lap, 100.);
    BOOST_TEST(goland_reissner_shear(work, lap, 100., k) == row.tau, tolerance(5e-6));
    BOOST_TEST(goland_reissner_peel(work, lap, 100., k) == row.sig, tolerance(5e-6));
  }
}

BOOST_AUTO_TEST_CASE(the_factor_goes_from_1_to_0_261204) {
  // published: limits of the theory, 1 and 1/(1 + 2 sqrt(2))
  PlainWorking work;
  SingleLap<double> lap = paste_lap();
  BOOST_TEST(goland_reissner_factor(work, lap, 0.) == 1);
  lap.l = 1e5;
  BOOST_TEST(goland_reissner_factor(work, lap, 100.) == 0.261204, tolerance(2e-6));
}

/// The peel of the lap with Poisson's ratio left out of the bending stiffness.
double peel_at(double x) {
  PlainWorking work;
  // derived: chi^4 = 6 Ea/(E eta t^3); M0 = k P t/2, V0 = M0 sqrt(P/D)
  return lap_peel_at(work,
                     PeelBeams<double>{std::pow(6 * 1000 / (8000. * 3 * 125), 0.25),
                                       138.62574, 4.5809510, 50},
                     x);
}

BOOST_AUTO_TEST_CASE(the_peel_meets_the_equation_of_two_beams_on_a_layer) {
  // derived: D w'''' = -2 sig and sig = Ea w/eta, so sig'''' = -4 chi^4 sig
  const double chi = std::pow(6 * 1000 / (8000. * 3 * 125), 0.25);
  for (const double x : {-24., -15., 0., 8., 23.}) {
    const double residual =
        derivatives(peel_at, x, 0.25).fourth / (4 * std::pow(chi, 4)) + peel_at(x);
    BOOST_TEST(std::abs(residual) < 1e-7 * peel_at(25));
  }
}

BOOST_AUTO_TEST_CASE(the_peel_meets_the_moment_and_shear_at_its_ends) {
  // derived: D w'' = M0 and D w''' = V0 at x = l/2, where w = sig eta/Ea; D = E t^3/12
  const double bending = 8000 * 125 / 12. * 3 / 1000;
  const Derivatives end = derivatives(peel_at, 25, 0.25);
  BOOST_TEST(bending * end.second == 138.62574, tolerance(1e-6));
  BOOST_TEST(bending * std::abs(end.third) == 4.5809510, tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(the_peak_is_the_peel_at_the_end) {
  BOOST_TEST(peel_at(25) == 7.16889, tolerance(5e-6));
  // derived: short form chi^2 M0 + chi V0 of a long lap, 0.01 % from the whole
  BOOST_TEST(peel_at(25) == 7.16828, tolerance(1e-4));
}

/// derived: the terms of the shear for k = 0.554503, r = 1 and no Poisson's ratio
LapShearTerms<double> thin_bond_terms() {
  const double k = 0.5545030;
  return {std::sqrt(8 * 370 / (8000. * 5 * 3)), 0.75 * (1 - k) * 2,
          100 / (8000. * 5 * 3) * (1 + 3 * k)};
}

BOOST_AUTO_TEST_CASE(the_shear_adds_up_to_the_load_and_meets_its_equation) {
  PlainWorking work;
  const auto terms = thin_bond_terms();
  const auto shear = [&](double x) {
    return lap_shear_at(work, paste_lap(), terms, x);
  };
  BOOST_TEST(shear(25) == 5.90132, tolerance(5e-6));
  // property: equilibrium, by quadrature
  const double sum =
      boost::math::quadrature::gauss<double, 30>::integrate(shear, -25., 25.);
  BOOST_TEST(sum == 100, tolerance(1e-6));
  // derived: tau'' = om^2 (tau - C0)
  for (const double x : {-20., 0., 24.}) {
    const double residual = derivatives(shear, x, 0.25).second -
                            terms.om * terms.om * (shear(x) - terms.C0);
    BOOST_TEST(std::abs(residual) < 1e-7 * shear(25));
  }
}

BOOST_AUTO_TEST_CASE(the_recommended_form_comes_to_this_for_a_thin_bond) {
  // property: with nu = 0 and a bond of no thickness in the eccentricity the two forms
  // are one. The eccentricity goes with eta/t = 1e-6, the flexibility is kept by Ga
  SingleLap<double> lap = {370e-6, 1000e-6, 5e-6, 8000, 5, 0, 1, 50};
  PlainWorking work;
  const auto at_edge = edge_loads(work, lap, 100., EdgeMoment::Held);
  BOOST_TEST(single_lap_shear(work, lap, 100., EdgeMoment::Held) ==
                 goland_reissner_shear(work, lap, 100., at_edge.k),
             tolerance(2e-6));
  BOOST_TEST(single_lap_peel(work, lap, 100., 0., EdgeMoment::Held) ==
                 goland_reissner_peel(work, lap, 100., at_edge.k),
             tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  for (const double l : {1., 50., 1e3, 1e5})
    for (const double eta : {1e-3, 1., 50.}) {
      const SingleLap<double> lap = {1600, 4500, eta, 8000, 5, 0.3, 1, l};
      PlainWorking work;
      WrittenWorking writing;
      const double k = goland_reissner_factor(work, lap, 100.);
      const Term factor = goland_reissner_factor(writing, written(lap), Term(100.));
      const double tau = goland_reissner_shear(work, lap, 100., k);
      const double sig = goland_reissner_peel(work, lap, 100., k);
      BOOST_TEST((std::isfinite(tau) && std::isfinite(sig)));
      BOOST_TEST(
          goland_reissner_shear(writing, written(lap), Term(100.), factor).value() ==
          tau);
      BOOST_TEST(
          goland_reissner_peel(writing, written(lap), Term(100.), factor).value() ==
          sig);
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

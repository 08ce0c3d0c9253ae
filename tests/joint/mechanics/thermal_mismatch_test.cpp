#include "joint/mechanics/thermal_mismatch.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/lap_shear.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// A joint of 8.5 m whose deck is 40 K warmer, strips of 300 mm of 6 and 5 mm laminate.
ThermalLap<double> sunlit(double Ga, double eta) {
  return {Ga, eta, 50, 8000. * 300 * 6, 8000. * 300 * 5, 8500, 25e-6 * 40};
}

BOOST_AUTO_TEST_SUITE(thermal_mismatch_test)

BOOST_AUTO_TEST_CASE(the_stresses_are_those_worked_elsewhere) {
  const struct {
    double Ga, eta, lam, tau, force, build_up, slip;
    const char* what;  // derived: the formulas in an independent script
  } rows[] = {
      {370, 3, 0.0306941, 4.01814, 6545.45, 97.7386, 0.0325795, "methacrylate"},
      {100, 3, 0.0159571, 2.08893, 6545.45, 188.004, 0.0626680, "tough methacrylate"},
      {1000, 1, 0.0874007, 11.4416, 6545.45, 34.3247, 0.0114416, "epoxy"},
      {0.4, 3, 0.00100922, 0.132066, 6365.93, 2972.60, 0.990495, "sealant"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.what) {
      PlainWorking work;
      const auto lap = sunlit(row.Ga, row.eta);
      BOOST_TEST(thermal_terms(work, lap).lam == row.lam, tolerance(5e-6));
      BOOST_TEST(thermal_end_shear(work, lap) == row.tau, tolerance(5e-6));
      BOOST_TEST(thermal_locked_force(work, lap) == row.force, tolerance(5e-6));
      BOOST_TEST(thermal_build_up(work, lap) == row.build_up, tolerance(5e-6));
      BOOST_TEST(thermal_end_slip(work, lap) == row.slip, tolerance(5e-6));
    }
}

BOOST_AUTO_TEST_CASE(the_stress_along_the_joint_builds_up_the_force) {
  // property: equilibrium; the stress over half the joint is the force at its middle
  for (const double Ga : {370., 0.4}) {
    PlainWorking work;
    const auto lap = sunlit(Ga, 3);
    const double sum = boost::math::quadrature::gauss_kronrod<double, 31>::integrate(
        [&](double x) { return thermal_shear_at(work, lap, x); }, 0, lap.L / 2, 15,
        1e-12);
    BOOST_TEST(sum * lap.w == thermal_locked_force(work, lap), tolerance(1e-9));
    BOOST_TEST(thermal_shear_at(work, lap, 0.) == thermal_end_shear(work, lap),
               tolerance(1e-13));
    BOOST_TEST(std::abs(thermal_shear_at(work, lap, lap.L / 2)) < 1e-12);
  }
}

BOOST_AUTO_TEST_CASE(the_end_stress_is_that_of_an_overlap_that_heat_strains) {
  // property: the same joint as an overlap for each mm of its width
  PlainWorking work;
  const auto lap = sunlit(370, 3);
  const double tau = end_2_shear(
      work,
      ShearLap<double>{lap.Ga, lap.eta, lap.EA_h / lap.w, lap.EA_d / lap.w, lap.L},
      {0, 0, lap.eps});
  BOOST_TEST(tau == thermal_end_shear(work, lap), tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_end_sets_free_the_energy_of_the_mismatch) {
  // property: eps^2/(2 S) = w eta tau^2/(2 Ga) for a long joint
  PlainWorking work;
  const auto lap = sunlit(1000, 1);
  const auto [S, lam] = thermal_terms(work, lap);
  const double tau = thermal_end_shear(work, lap);
  BOOST_TEST(lap.eps * lap.eps / (2 * S) == lap.w * lap.eta * tau * tau / (2 * lap.Ga),
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  for (const double L : {1., 1e3, 1e5})
    for (const double eta : {1e-3, 50.}) {
      ThermalLap<double> lap = sunlit(370, eta);
      lap.L = L;
      const ThermalLap<Term> words = {
          Term::named("Ga", lap.Ga),     Term::named("eta", eta),
          Term::named("w", lap.w),       Term::named("EA_h", lap.EA_h),
          Term::named("EA_d", lap.EA_d), Term::named("L", L),
          Term::named("eps", lap.eps)};
      PlainWorking work;
      WrittenWorking writing;
      const double slip = thermal_end_slip(work, lap);
      const double force = thermal_locked_force(work, lap);
      BOOST_TEST((std::isfinite(slip) && std::isfinite(force)));
      BOOST_TEST(thermal_end_slip(writing, words).value() == slip);
      BOOST_TEST(thermal_locked_force(writing, words).value() == force);
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

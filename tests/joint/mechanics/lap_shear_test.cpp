#include "joint/mechanics/lap_shear.h"

#include <boost/math/quadrature/gauss.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(lap_shear_test)

/// Laminates of 6 and 4 mm, 50 mm overlap, 3 mm of stiff paste.
ShearLap<double> unequal_lap() { return {370, 3, 48000, 32000, 50}; }

ShearLap<Term> written(const ShearLap<double>& lap) {
  return {Term::named("Ga", lap.Ga), Term::named("eta", lap.eta),
          Term::named("E1t1", lap.E1t1), Term::named("E2t2", lap.E2t2),
          Term::named("l", lap.l)};
}

double at(const ShearLap<double>& lap, const ShearLoad<double>& load, double x) {
  PlainWorking work;
  return shear_at(work, lap, load, x);
}

BOOST_AUTO_TEST_CASE(the_shear_lag_is_that_of_the_published_parameter) {
  // published: ESDU 80011 (1980), page 1, parameter
  // sqrt[(Ga t1/(E1 ta))(1 + E1 t1/(E2 t2))] = lam t1; derived: here 0.480885, t1 = 6
  PlainWorking work;
  const double lam = shear_lag(work, unequal_lap());
  BOOST_TEST(lam == 0.480885 / 6, tolerance(1e-6));
  BOOST_TEST(lam == std::sqrt(370. * 6 / (8000 * 3) * (1 + 48000. / 32000)) / 6,
             tolerance(1e-14));
}

BOOST_AUTO_TEST_CASE(the_stresses_are_those_worked_elsewhere) {
  const struct {
    ShearLap<double> lap;
    double P, lam, mean, end_1, end_2, middle;
    const char* source;
  } rows[] = {
      // derived: Volkersen's formula with hyperbolic functions, in an independent
      // script
      {{370, 3, 40000, 40000, 50}, 100, 0.0785281, 2, 4.08433, 4.08433, 1.12477, "V1"},
      {unequal_lap(), 100, 0.0801474, 2, 3.38294, 4.92864, 1.1007, "V2"},
      {{370, 0.5, 48000, 32000, 50}, 100, 0.19632, 2, 7.8541, 11.7801, 0.145033, "V2b"},
      {{370, 3, 18000, 12000, 50},
       30,
       0.13088,
       0.6,
       1.57735,
       2.36037,
       0.149144,
       "V4: shear flow"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      PlainWorking work;
      const ShearLoad<double> load = {row.P, 0, 0};
      BOOST_TEST(shear_lag(work, row.lap) == row.lam, tolerance(5e-6));
      BOOST_TEST(mean_shear(work, row.lap, row.P) == row.mean, tolerance(1e-14));
      BOOST_TEST(end_1_shear(work, row.lap, load) == row.end_1, tolerance(5e-6));
      BOOST_TEST(end_2_shear(work, row.lap, load) == row.end_2, tolerance(5e-6));
      BOOST_TEST(peak_shear(work, row.lap, row.P) == std::max(row.end_1, row.end_2),
                 tolerance(5e-6));
      BOOST_TEST(at(row.lap, load, 0) == row.middle, tolerance(5e-6));
    }
}

/// Half of a double lap, in pounds and inches: a steel-like inner adherend between two
/// outer ones, cured at 200 F and used at 70 F.
/// Inputs published: Shigley, Mechanical Engineering Design, double-lap example.
const ShearLap<double> double_lap = {0.2e6, 0.020, 10e6 * 0.150, 30e6 * 0.100 / 2, 1};
const ShearLoad<double> cooled = {1000, 13.3e-6 * (70 - 200), 6.0e-6 * (70 - 200)};

BOOST_AUTO_TEST_CASE(heat_adds_to_one_end_and_takes_from_the_other) {
  // derived: from those inputs; about 604 and 816 are as the book's answer is
  // remembered
  PlainWorking work;
  BOOST_TEST(shear_lag(work, double_lap) == 3.65148, tolerance(2e-6));
  BOOST_TEST(end_2_shear(work, double_lap, cooled) == 4390.49, tolerance(2e-6));
  BOOST_TEST(end_1_shear(work, double_lap, cooled) == -544.425, tolerance(2e-6));
  for (const double x : {-0.5, -0.2, 0.1, 0.5}) {
    const double wx = 3.6514837 * x;
    BOOST_TEST(
        at(double_lap, cooled, x) == 603.920 * std::cosh(wx) + 816.187 * std::sinh(wx),
        tolerance(5e-6));
  }
}

BOOST_AUTO_TEST_CASE(heat_moves_stress_and_not_load) {
  // property: equilibrium; the stress over the overlap is the load, by quadrature
  for (const auto& [lap, load] :
       {std::pair{double_lap, cooled},
        std::pair{unequal_lap(), ShearLoad<double>{100, 1e-3, 0}}}) {
    const double sum = boost::math::quadrature::gauss<double, 30>::integrate(
        [&](double x) { return at(lap, load, x); }, -lap.l / 2, lap.l / 2);
    BOOST_TEST(sum == load.P, tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(the_ends_are_where_the_stress_along_the_lap_ends) {
  PlainWorking work;
  BOOST_TEST(at(double_lap, cooled, -0.5) == end_1_shear(work, double_lap, cooled),
             tolerance(1e-13));
  BOOST_TEST(at(double_lap, cooled, 0.5) == end_2_shear(work, double_lap, cooled),
             tolerance(1e-13));
}

BOOST_AUTO_TEST_CASE(adherends_turned_about_give_the_stresses_turned_about) {
  // property: symmetry
  const ShearLap<double> turned = {370, 3, 32000, 48000, 50};
  for (const double x : {-25., -7., 0., 18.})
    BOOST_TEST(
        at(unequal_lap(), {100, 1e-4, 3e-4}, x) == at(turned, {100, 3e-4, 1e-4}, -x),
        tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_rigid_lap_is_sheared_evenly) {
  // property: limit of a short lap with a soft adhesive
  PlainWorking work;
  const ShearLap<double> soft = {1e-6, 3, 48000, 32000, 50};
  BOOST_TEST(peak_shear(work, soft, 100.) == 2, tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  // property: no overflow from the shortest to the longest lap
  for (const double l : {1., 50., 1e3, 1e5})
    for (const double eta : {1e-3, 1., 50.})
      for (const double ratio : {1e-3, 1., 1e3}) {
        const ShearLap<double> lap = {1600, eta, 40000, 40000 * ratio, l};
        PlainWorking work;
        const double peak = peak_shear(work, lap, 100.),
                     middle = at(lap, {100, 0, 0}, 0);
        BOOST_TEST((std::isfinite(peak) && std::isfinite(middle)));
        BOOST_TEST(peak >= 100 / l * (1 - 1e-12));
        BOOST_TEST(middle <= 100 / l * (1 + 1e-12));
        WrittenWorking writing;
        BOOST_TEST(peak_shear(writing, written(lap), Term(100.)).value() == peak);
      }
}

BOOST_AUTO_TEST_CASE(a_load_across_and_a_flow_along_stand_in_one_working) {
  WrittenWorking work;
  const auto lap = written(unequal_lap());
  peak_shear(work, lap, Term::named("P", 100));
  peak_shear(work,
             {lap.Ga, lap.eta, Term::named("G1t1", 18000), Term::named("G2t2", 12000),
              Term::named("w", 50)},
             Term::named("q", 30), shear_along);
  BOOST_TEST_REQUIRE(work.steps().size() == 6U);
  BOOST_TEST(work.steps()[2].formula ==
             "P*lam/2*(coth(lam*l/2) + abs(Om)*tanh(lam*l/2))");
  BOOST_TEST(work.steps()[5].formula ==
             "q*lam_L/2*(coth(lam_L*w/2) + abs(Om_L)*tanh(lam_L*w/2))");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

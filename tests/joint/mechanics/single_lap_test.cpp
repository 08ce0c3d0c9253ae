#include "joint/mechanics/single_lap.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/joint/mechanics/example_laps.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

double shear(const SingleLap<double>& lap,
             double P,
             EdgeMoment edge = EdgeMoment::Turning) {
  PlainWorking work;
  return single_lap_shear(work, lap, P, edge);
}

double peel(const SingleLap<double>& lap,
            double P,
            double V_off = 0,
            EdgeMoment edge = EdgeMoment::Turning) {
  PlainWorking work;
  return single_lap_peel(work, lap, P, V_off, edge);
}

SingleLap<double> with_gap(double eta) {
  SingleLap<double> lap = paste_lap();
  lap.eta = eta;
  return lap;
}

BOOST_AUTO_TEST_SUITE(single_lap_test)

BOOST_AUTO_TEST_CASE(the_steps_are_those_worked_elsewhere) {
  WrittenWorking work;
  single_lap_shear(work, written(paste_lap()), Term::named("P", 100),
                   EdgeMoment::Turning);
  single_lap_peel(work, written(paste_lap()), Term::named("P", 100), Term(0.),
                  EdgeMoment::Turning);
  const struct {
    const char* letters;
    double value;  // derived: the same formulas in an independent script
  } rows[] = {{"D", 91575.1},   {"xi", 0.0330454},    {"k", 0.515494},
              {"r", 1.6},       {"a", 4.368},         {"om", 0.181941},
              {"C0", 0.788495}, {"tau_max", 6.30030}, {"M0", 206.198},
              {"V0", 6.81389},  {"chi", 0.206547},    {"sig_max", 10.2050}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.letters) {
      const auto step = std::find_if(
          work.steps().begin(), work.steps().end(),
          [&](const Reason& reason) { return reason.letters == row.letters; });
      BOOST_TEST_REQUIRE((step != work.steps().end()));
      BOOST_TEST(step->value == row.value, tolerance(5e-6));
    }
}

BOOST_AUTO_TEST_CASE(a_thicker_bond_lowers_the_shear_but_not_the_peel) {
  const struct {
    double eta, tau_max, sig_max;  // derived: the same formulas in a script
  } rows[] = {{0.5, 12.9754, 16.3282}, {1, 9.58519, 12.8164}, {2, 7.27292, 10.7902},
              {3, 6.30030, 10.2050},   {5, 5.38763, 10.0640}, {10, 4.57898, 10.9686}};
  for (const auto& row : rows) {
    BOOST_TEST(shear(with_gap(row.eta), 100) == row.tau_max, tolerance(5e-6));
    BOOST_TEST(peel(with_gap(row.eta), 100) == row.sig_max, tolerance(5e-6));
  }
}

BOOST_AUTO_TEST_CASE(peel_of_6_is_reached_at_a_pull_of_52) {
  // derived: root of the formula in an independent script
  BOOST_TEST(peel(paste_lap(), 52.1952) == 6, tolerance(5e-6));
}

BOOST_AUTO_TEST_CASE(edges_that_are_held_take_the_whole_eccentricity) {
  // derived: k = 1 in a = 4.368, om = 0.181941: C0 = 0 and
  // tau_max = (370/0.181941)*(100/120000)*5.368*coth(4.54853) = 9.09911
  BOOST_TEST(shear(paste_lap(), 100, EdgeMoment::Held) == 9.09911, tolerance(1e-5));
  // property: linear in k but for C0, which peel has not
  BOOST_TEST(peel(paste_lap(), 100, 0, EdgeMoment::Held) == 10.2050 / 0.515494,
             tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(the_factor_falls_from_1_with_the_load) {
  // property: limits
  PlainWorking work;
  BOOST_TEST(edge_loads(work, paste_lap(), 0., EdgeMoment::Turning).k == 1);
  BOOST_TEST(edge_loads(work, paste_lap(), 1e12, EdgeMoment::Turning).k < 1e-6);
}

BOOST_AUTO_TEST_CASE(a_lip_pulled_away_adds_its_peel) {
  // derived: long lap, so F_off = 1: chi = 0.206547 1/mm times 10 N/mm; X = 5.16 is so
  // long that both factors differ from 1 by less than 1e-3
  BOOST_TEST(peel(paste_lap(), 100, 10) - peel(paste_lap(), 100) == 2.06547,
             tolerance(1e-3));
  BOOST_TEST(peel(paste_lap(), 0, 10) == 2.06547, tolerance(1e-3));
  // derived: a rigid lip on a soft layer, held at its far end: 4 V/l by statics, as the
  // resultant of the layer stands under the pull
  SingleLap<double> rigid = paste_lap();
  rigid.Ea = 1e-4;
  BOOST_TEST(peel(rigid, 0, 10) == 4 * 10 / 50., tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  // property: no overflow, no stress below the mean
  for (const double l : {1., 50., 1e3, 1e5})
    for (const double eta : {1e-3, 1., 50.})
      for (const double stiffer : {1e-3, 1., 1e3})
        for (const EdgeMoment edge : {EdgeMoment::Turning, EdgeMoment::Held}) {
          const SingleLap<double> lap = {1600, 4500, eta, 8000 * stiffer,
                                         5,    0.3,  0.8, l};
          const double tau = shear(lap, 100, edge), sig = peel(lap, 100, 10, edge);
          BOOST_TEST((std::isfinite(tau) && std::isfinite(sig)));
          BOOST_TEST(tau >= 100 / l * (1 - 1e-9));
          BOOST_TEST(sig >= 10 / l * (1 - 1e-9));
          WrittenWorking work;
          BOOST_TEST(single_lap_shear(work, written(lap), Term(100.), edge).value() ==
                     tau);
          BOOST_TEST(single_lap_peel(work, written(lap), Term(100.), Term(10.), edge)
                         .value() == sig);
        }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

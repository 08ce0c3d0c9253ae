#include "joint/mechanics/wedge_single_lap.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/mechanics/wedge_single_lap_peel.h"
#include "tests/joint/mechanics/example_laps.h"
#include "tests/joint/mechanics/lap_strip.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(wedge_single_lap_test)

/// The strip of a wedge in balance; beam 2 is the lip, its root at +l/2.
BeamStrip balanced(const WedgeSingleLap<double>& wedge, double P, double k) {
  PlainWorking work;
  const auto& lap = wedge.lap;
  const double arm = (lap.t + std::max(lap.eta, wedge.eta_tip)) / 2, M = k * P * arm;
  BeamStrip strip = {};
  strip.Ga = lap.Ga;
  strip.Ea = lap.Ea;
  strip.eta_1 = wedge.eta_tip;
  strip.eta_2 = lap.eta;
  strip.Et = lap.E * lap.t;
  strip.D = edge_loads(work, lap, P, EdgeMoment::Turning).D;
  strip.l = lap.l;
  strip.force_arm = arm;
  strip.strain_arm = arm;
  strip.P = P;
  strip.M = M;
  strip.V = (2 * P * arm - 2 * M) / lap.l;
  return strip;
}

/// A lap with Poisson's ratio as the others and the adhesive's Ea = 3 Ga.
WedgeSingleLap<double> wedge_of(double Ga, double root, double tip, double l) {
  return {{Ga, 3 * Ga, root, 8000, 5, 0.3, 1, l}, tip};
}

double strip_shear(const BeamStrip& strip) {
  const StripStresses coarse = strip_stresses(strip, 100),
                      fine = strip_stresses(strip, 200);
  return std::max((4 * fine.tau_1 - coarse.tau_1) / 3,
                  (4 * fine.tau_2 - coarse.tau_2) / 3);
}

BOOST_AUTO_TEST_CASE(the_even_gap_of_the_thin_end_is_not_safe) {
  // pinned: even gap of 1 mm against the strip of 1 to 8 mm; the header's figures
  const struct {
    double Ga, Ea, shear, peel, off;
  } rows[] = {{370, 1000, 0.901914, 0.939514, 0.895203},
              {0.4, 1.2, 0.303421, 1.279667, 0.431157}};
  for (const auto& row : rows) {
    PlainWorking work;
    WedgeSingleLap<double> wedge = wedge_of(row.Ga, 1, 8, 50);
    wedge.lap.Ea = row.Ea;
    const double D = edge_loads(work, wedge.lap, 100., EdgeMoment::Turning).D;
    BeamStrip strip = balanced(wedge, 100, 0.515494);
    strip.strain_arm = 2.5;  // of the faces alone
    const double r = strip.force_arm * 2 / 5, a = 3 * 0.91 * r;
    const double om = std::sqrt(2 * row.Ga / 40000. * (1 + a));
    const double even_shear =
        a / (1 + a) * (1 - 0.515494) * 2 +
        row.Ga / om * 100 / 40000 * (1 + a * 0.515494) / std::tanh(om * 25);
    BOOST_TEST(even_shear / strip_shear(strip) == row.shear, tolerance(5e-6));
    const auto even = unit_peel(work, PeelLayer<double>{D, row.Ea, 1, 50},
                                wedge_single_lap_words::thin_peel);
    BOOST_TEST((even.moment * strip.M + even.shear * strip.V) /
                       strip_stresses(strip, 200).sig_2 ==
                   row.peel,
               tolerance(5e-6));
    strip.P = strip.M = 0;
    strip.V = 1;
    BOOST_TEST(even.off / strip_stresses(strip, 200).sig_2 == row.off, tolerance(5e-6));
  }
}

BOOST_AUTO_TEST_CASE(the_shear_of_a_wedge_is_not_below_the_strip) {
  // property: over soft and stiff adhesives, root thin and root thick; the tolerance is
  // that of the strip at the stiffest
  for (const double Ga : {0.4, 5., 370.})
    for (const double thick : {2., 6., 15.})
      for (const double l : {15., 50.})
        for (const bool root_is_thin : {true, false}) {
          PlainWorking work;
          const auto wedge =
              root_is_thin ? wedge_of(Ga, 1, thick, l) : wedge_of(Ga, thick, 1, l);
          const double k = edge_loads(work, wedge.lap, 100., EdgeMoment::Turning).k;
          const double shear =
              wedge_single_lap_shear(work, wedge, 100., EdgeMoment::Turning);
          const double exact = strip_shear(balanced(wedge, 100, k));
          BOOST_TEST(shear >= exact * (1 - 1e-3));
          BOOST_TEST(shear <= exact * 1.25);
        }
}

/// A wedge of 1 mm at its thin end whose X is as asked.
WedgeSingleLap<double> wedge_of_length(double X, double thick, bool root_is_thin) {
  const double D = 8000 * 125 / (12 * 0.91);
  WedgeSingleLap<double> wedge = {
      {1, 2 * D * std::pow(2 * X / 50, 4), 1, 8000, 5, 0.3, 1, 50}, thick};
  if (!root_is_thin) std::swap(wedge.lap.eta, wedge.eta_tip);
  return wedge;
}

BOOST_AUTO_TEST_CASE(the_peel_of_a_wedge_is_not_below_the_strip) {
  // property: each load by itself, at whichever end it peels most
  for (const double X : {0.3, 0.8, 1.4, 1.8, 2.1, 2.3, 2.6, 3., 3.5, 5., 8., 10.})
    for (const double thick : {1., 1.2, 2., 4., 8., 20.})
      for (const bool root_is_thin : {true, false})
        BOOST_TEST_CONTEXT("X " << X << ", thick " << thick) {
          PlainWorking work;
          const auto wedge = wedge_of_length(X, thick, root_is_thin);
          BeamStrip strip = balanced(wedge, 0, 0);
          const auto peel = wedge_unit_peel(work, wedge, strip.D);
          const auto peak = [&](double P, double M, double V) {
            strip.P = P, strip.M = M, strip.V = V;
            const StripStresses ends = strip_stresses(strip, 160);
            return std::max(ends.sig_1, ends.sig_2);
          };
          const double margin = 1 - 1e-4;  // of the strip
          BOOST_TEST(peel.moment >= margin * peak(1 / strip.force_arm, 1, 0));
          BOOST_TEST(peel.shear >=
                     margin * peak(strip.l / (2 * strip.force_arm), 0, 1));
          BOOST_TEST(peel.off >= margin * peak(0, 0, 1));
        }
}

BOOST_AUTO_TEST_CASE(the_peel_of_a_stiff_wedge_is_near_the_strip) {
  for (const double thick : {1.2, 2., 4.}) {
    PlainWorking work;
    const auto wedge = wedge_of_length(6, thick, true);
    const double k = 0.5;
    const BeamStrip strip = balanced(wedge, 100, k);
    const auto peel = wedge_unit_peel(work, wedge, strip.D);
    const double exact = strip_stresses(strip, 200).sig_2;
    BOOST_TEST(peel.moment * strip.M + peel.shear * strip.V <= 1.045 * exact);
  }
}

BOOST_AUTO_TEST_CASE(an_even_gap_is_the_single_lap) {
  // property: limit
  for (const double Ga : {0.4, 370.})
    for (const double l : {1., 50., 1e5})
      for (const EdgeMoment edge : {EdgeMoment::Turning, EdgeMoment::Held}) {
        PlainWorking work;
        const auto wedge = wedge_of(Ga, 3, 3, l);
        BOOST_TEST(wedge_single_lap_shear(work, wedge, 100., edge) ==
                       single_lap_shear(work, wedge.lap, 100., edge),
                   tolerance(1e-12));
        BOOST_TEST(wedge_single_lap_peel(work, wedge, 100., 10., edge) ==
                       single_lap_peel(work, wedge.lap, 100., 10., edge),
                   tolerance(1e-9));
      }
}

BOOST_AUTO_TEST_CASE(stresses_are_finite_and_the_same_in_both_workings) {
  for (const double l : {1., 50., 1e5})
    for (const double thin : {1e-3, 3.})
      for (const bool root_is_thin : {true, false}) {
        const auto wedge =
            root_is_thin ? wedge_of(400, thin, 50, l) : wedge_of(400, 50, thin, l);
        const WedgeSingleLap<Term> words = {written(wedge.lap),
                                            Term::named("eta_tip", wedge.eta_tip)};
        PlainWorking work;
        WrittenWorking writing;
        const auto edge = EdgeMoment::Turning;
        const double tau = wedge_single_lap_shear(work, wedge, 100., edge);
        const double sig = wedge_single_lap_peel(work, wedge, 100., 10., edge);
        BOOST_TEST((std::isfinite(tau) && std::isfinite(sig) && tau > 0 && sig > 0));
        BOOST_TEST(wedge_single_lap_shear(writing, words, Term(100.), edge).value() ==
                   tau);
        BOOST_TEST(wedge_single_lap_peel(writing, words, Term(100.), Term(10.), edge)
                       .value() == sig);
      }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap
